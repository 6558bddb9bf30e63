import { type DynamicModule, Module } from '@nestjs/common';
import type { MapTiles } from '../platform/map-config.js';
import { MapController, MapSettings } from './map.controller.js';

/** What the desk knows of places and how they are drawn. */
@Module({ controllers: [MapController] })
export class PlaceModule {
  static with(tiles: MapTiles | null): DynamicModule {
    return { module: PlaceModule, providers: [{ provide: MapSettings, useValue: new MapSettings(tiles) }] };
  }
}
