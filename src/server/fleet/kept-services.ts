import type { FleetCraftDto } from '../../../shared/wire/fleet-craft.dto.js';
import type { FleetPlaceDto } from '../../../shared/wire/fleet-place.dto.js';
import type { PolicyDto } from '../../../shared/wire/fleet-policy.dto.js';
import type { StationDto } from '../../../shared/wire/fleet-station.dto.js';
import type { CraftRow } from './database/craft.row.js';
import type { PlaceRow } from './database/place.row.js';
import type { PolicyRow } from './database/policy.row.js';
import type { StationRow } from './database/station.row.js';
import { KeptService } from './kept.service.js';

/** One class a kind, so that each can be asked for by name. */
export class CraftService extends KeptService<FleetCraftDto, CraftRow> {}
export class StationsService extends KeptService<StationDto, StationRow> {}
export class PlacesService extends KeptService<FleetPlaceDto, PlaceRow> {}
export class PoliciesService extends KeptService<PolicyDto, PolicyRow> {}
