import type { OutingDto } from '../../../shared/wire/outing-requests.dto.js';
import type { OutingDetails } from '../../../shared/outing/outing.js';
import type { Actor } from '../accounts/accounts.api.js';
import type { CraftInUse } from '../fleet/fleet.api.js';
import type { OutingRow } from './database/outing.row.js';

/** What everybody may know of an outing, a device that nobody signed in on among them: no person is in it. */
export interface OutingReceipt {
  readonly id: string;
  readonly version: number;
  readonly craftId: string;
  readonly unit: string;
  readonly outAt: string | null;
  readonly dueBackAt: string | null;
  readonly backAt: string | null;
}

export type OutingView = OutingReceipt & { readonly details: OutingDetails };

export function receiptOf(row: OutingRow, { unitName }: CraftInUse): OutingReceipt {
  const { id, version, craftId, outAt, dueBackAt, backAt } = row;
  return { id, version, craftId, unit: unitName, outAt, dueBackAt, backAt };
}

export function viewOf(row: OutingRow, craft: CraftInUse): OutingView {
  return { ...receiptOf(row, craft), details: row.details };
}

/** A device adds and does not read: it is told what it did, and nobody's name or number. */
export function shownTo(actor: Actor, row: OutingRow, craft: CraftInUse): OutingReceipt {
  return actor.kind === 'person' ? viewOf(row, craft) : receiptOf(row, craft);
}

/** What is kept of an outing as it was typed. */
export function keptOf({ unit, outAt, dueBackAt, ...details }: OutingDto) {
  void unit;
  return { details, outAt: outAt ?? null, dueBackAt: dueBackAt ?? null };
}
