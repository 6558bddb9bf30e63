import {
  OUTSIDE_KINDS,
  OUTSIDE_STATES,
  type OutsideEvidence,
  type OutsideKind,
  type OutsideState,
} from '../record/evidence-section.js';
import { ids } from './evidence-values.js';
import { Needed, Value } from './record-members.js';
import { instant, line, oneOf, text } from './record-values.js';

/** Evidence that somebody else holds: who, until when, and what came of asking. */
export class OutsideEvidenceDto implements Omit<OutsideEvidence, 'id' | 'version'> {
  @Needed(oneOf(OUTSIDE_KINDS))
  kind: OutsideKind;

  @Needed(oneOf(OUTSIDE_STATES))
  state: OutsideState;

  @Value(text)
  what?: string;

  @Value(line)
  holder?: string;

  @Value(line)
  howToReach?: string;

  /** From then on it may be gone. */
  @Value(instant)
  overwrittenAt?: string;

  @Value(instant)
  askedAt?: string;

  @Value(line)
  askedBy?: string;

  @Value(text)
  answer?: string;

  /** Of what somebody posted: where it stands. */
  @Value(line)
  address?: string;

  @Value(line)
  account?: string;

  @Value(instant)
  seenAt?: string;

  @Value(line)
  finder?: string;

  /** Ids of the files that came of it. */
  @Value(ids)
  files?: string[];
}
