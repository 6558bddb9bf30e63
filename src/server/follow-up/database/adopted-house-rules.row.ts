import { Entity } from 'typeorm';
import type { AdoptedRules } from '../../../../shared/follow-up/house-rule.js';
import {
  DayColumn,
  IdColumn,
  InstantColumn,
  JsonColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** Dated written rules that the owner adopted; never changed, and the latest of a day counts. */
@Entity('adopted_house_rules')
export class AdoptedHouseRulesRow {
  @IdColumn() id: string;
  @DayColumn() adoptedOn: string;
  @TextColumn() document: string;
  @JsonColumn() rules: AdoptedRules['rules'];
  @TextColumn() person: string;
  @TextColumn() accountId: string;
  @InstantColumn() recordedAt: string;
}
