import { randomBytes } from 'node:crypto';
import { commitField, type Opening } from '../../../shared/proof/commit-field.js';
import { hashAmendment, REASON_PATH, type FieldChange } from '../../../shared/proof/hash-amendment.js';
import type { FieldEdit } from '../../../shared/record/find-changes.js';
import type { JsonValue } from '../../../shared/record/json-value.js';
import { ASIDE } from '../../../shared/record/replay-amendments.js';
import type { Author } from './actor-words.js';
import type { AmendmentRow, ChangeOpening } from './database/amendment.row.js';

/** An amendment to be made. */
export interface NewAmendment {
  readonly incidentId: string;
  readonly section: string;
  readonly edits: readonly FieldEdit[];
  readonly reason?: string | undefined;
  readonly finished?: boolean;
  /** Paths whose content goes with this amendment. */
  readonly withdrawn?: readonly string[];
  /** Commitments to what stood at the paths that are withdrawn, as an earlier amendment holds them. */
  readonly kept?: ReadonlyMap<string, string>;
}

const SALT_BYTES = 32;

/** A leaf of the log with its openings; each value is committed to under a salt of its own. */
export function makeAmendment(
  { incidentId, section, edits, reason, finished, withdrawn, kept }: NewAmendment,
  { who, device, person }: Author,
  sequence: number,
  when: string,
): AmendmentRow {
  const changes: FieldChange[] = [];
  const openings: ChangeOpening[] = [];
  const add = (path: string, from: JsonValue, to: JsonValue): void => {
    const [before, after] = [kept?.get(path) ?? commit(path, from), commit(path, to)];
    // What is withdrawn is named by the commitment of the amendment that wrote it, and by nothing that opens it.
    const gone = typeof before === 'string';
    changes.push({ path, from: gone ? before : before.commitment, to: after.commitment });
    openings.push({ from: gone ? null : before.opening, to: after.opening });
  };
  for (const { path, from, to } of edits) add(path, from, to);
  add(ASIDE.person, null, person);
  if (finished === true) add(ASIDE.finished, null, true);
  if (withdrawn !== undefined) add(ASIDE.withdrawn, null, withdrawn);
  const said = reason === undefined ? null : commit(REASON_PATH, reason);
  const header = { sequence, incidentId, who, device, when, section, reason: said?.commitment ?? null };
  return {
    sequence,
    incidentId,
    section,
    who,
    device,
    madeAt: when,
    changes,
    openings,
    reasonCommitment: header.reason,
    reasonOpening: said?.opening ?? null,
    leafHash: hashAmendment({ header, fields: changes }),
  };
}

function commit(path: string, value: JsonValue): { commitment: string; opening: Opening } {
  const opening = { salt: randomBytes(SALT_BYTES).toString('hex'), value };
  return { commitment: commitField(path, opening), opening };
}
