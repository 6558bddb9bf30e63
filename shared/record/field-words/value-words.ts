import type { CallChannel, CallKind, OverdueEnd } from '../../call/call.js';
import type { HowKnown } from '../../call/known.js';
import type { Stamp } from '../../call/stamp.js';
import type { Ternary } from '../../kernel/truth.js';
import type { ContactParty } from '../account-sections.js';
import type { RenterAnswer } from '../check-in-section.js';
import type { MoneyKind } from '../damage-section.js';
import type { Care, DamagedThing, DamageItem, PersonOutcome, VesselUse } from '../incident-facts.js';
import type { IncidentStatus } from '../incident-record.js';
import type { Lanyard, LifeJacket, PersonRole } from '../people-section.js';
import type { HandOverBasis, ResponderKind } from '../response-sections.js';
import type { SceneLineKind, SceneMovement, SceneThing } from '../scene-section.js';
import type { Shot } from '../shots.js';
import type { Occurred } from '../time-and-place.js';

/** The words of each closed list; a value without one stops the type check. */
export interface ValueWords {
  ternary: Record<Ternary, string>;
  yesNo: Record<'true' | 'false', string>;
  known: Record<HowKnown, string>;
  stamped: Record<Stamp['how'], string>;
  precision: Record<Occurred['precision'], string>;
  callKind: Record<CallKind, string>;
  callChannel: Record<CallChannel, string>;
  overdueEnd: Record<OverdueEnd, string>;
  role: Record<PersonRole, string>;
  lifeJacket: Record<LifeJacket, string>;
  lanyard: Record<Lanyard, string>;
  outcome: Record<PersonOutcome, string>;
  care: Record<Care, string>;
  assessment: Record<'complete' | 'partial' | 'not-yet', string>;
  use: Record<VesselUse, string>;
  thing: Record<DamagedThing, string>;
  basis: Record<NonNullable<DamageItem['basis']>, string>;
  money: Record<MoneyKind, string>;
  responder: Record<ResponderKind, string>;
  handedOver: Record<HandOverBasis, string>;
  party: Record<ContactParty, string>;
  direction: Record<'in' | 'out', string>;
  renterAnswer: Record<RenterAnswer, string>;
  shot: Record<Shot, string>;
  sceneThing: Record<SceneThing, string>;
  sceneMovement: Record<SceneMovement, string>;
  sceneLine: Record<SceneLineKind, string>;
  status: Record<IncidentStatus, string>;
}
