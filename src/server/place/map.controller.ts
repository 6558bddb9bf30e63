import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { MayUse } from '../platform/http/may-use.js';
import type { MapTiles } from '../platform/map-config.js';

/** What maps are drawn on. */
export class MapSettings {
  constructor(readonly tiles: MapTiles | null) {}
}

@ApiTags('place')
@Controller('api/map')
export class MapController {
  constructor(private readonly settings: MapSettings) {}

  @Get()
  @MayUse('anyone')
  @DescribeRoute({
    operationId: 'readMap',
    summary: 'From where maps take pictures, if the business has set it; otherwise they ask nobody',
    answer: 'MapSettings',
  })
  read(): { tiles: MapTiles | null } {
    return { tiles: this.settings.tiles };
  }
}
