import { createHash } from 'node:crypto';
import { commitField, type Opening } from '../../shared/proof/commit-field.js';
import { hashAmendment, REASON_PATH, type Amendment } from '../../shared/proof/hash-amendment.js';
import type { LogEntry } from '../../shared/proof/verify-amendment.js';

/** A salt for a name: the same each run, as a test must be. */
export const saltFor = (name: string) => createHash('sha256').update(name).digest('hex');

/** Amendment number `sequence` of a made-up log: two fields changed, with a reason, all values shown. */
export function sampleEntry(sequence: number): LogEntry {
  const opening = (name: string, value: Opening['value']): Opening => ({
    salt: saltFor(`${sequence} ${name}`),
    value,
  });
  const reason = opening('reason', 'heard it again on the radio recording');
  const changes = [
    { path: '/people/0/birthDate', from: opening('a', null), to: opening('b', '1990-05-17') },
    { path: '/craft/0/damage', from: opening('c', sequence - 1), to: opening('d', sequence) },
  ];
  const amendment: Amendment = {
    header: {
      sequence,
      incidentId: `incident-${sequence % 3}`,
      who: 'u-4',
      device: 'dock-phone',
      when: '2026-07-04T18:22:05Z',
      section: 'people',
      reason: commitField(REASON_PATH, reason),
    },
    fields: changes.map(({ path, from, to }) => ({
      path,
      from: commitField(path, from),
      to: commitField(path, to),
    })),
  };
  return {
    amendment,
    leafHash: hashAmendment(amendment),
    shown: [
      { of: 'reason', ...reason },
      ...changes.flatMap(({ path, from, to }) => [
        { of: 'from' as const, path, ...from },
        { of: 'to' as const, path, ...to },
      ]),
    ],
  };
}

/** A log of amendments 1 to `size`. */
export const sampleLog = (size: number) => Array.from({ length: size }, (_, index) => sampleEntry(index + 1));
