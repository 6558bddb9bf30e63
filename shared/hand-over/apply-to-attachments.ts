import type { IncidentRecord } from '../record/incident-record.js';
import { isJsonObject, type JsonObject } from '../record/json-value.js';
import { namesToMask } from './apply-profile.js';
import { applySection, type DecidedField } from './apply-section.js';
import type { DecidedFile } from './decide-file.js';
import type { Attachment, Profile } from './hand-over-profile.js';
import type { SenderChoices } from './sender-choices.js';

/** Sections that the service writes about an incident, by name. */
export type Attachments = Readonly<Record<string, JsonObject>>;

/** What a list of such a section is; a section or list that is not here stays with everybody. */
const KINDS: Readonly<Record<string, Attachment>> = {
  'custody/items': 'custody',
  'outside-evidence/items': 'outside-evidence',
  'holds/holds': 'hold',
  'holds/withdrawals': 'hold',
  'requests/requests': 'request',
  'decisions/decisions': 'decision',
  'decisions/reopenings': 'decision',
  'filings/filings': 'filing',
  'filings/operatorNotices': 'notice',
  'filings/legalCalls': 'privileged',
  'reports/notes': 'decision',
  'reports/printed': 'task',
  'assignments/counsel': 'privileged',
};

/** What the device wrote into a file about place and time. */
const METADATA = /^\/files\/[^/]+\/captured(\/|$)/;

/**
 * Lays a profile over what the service keeps of an incident, so that it can be proven by the same log. Of the list of
 * evidence the lines of those files leave that leave themselves.
 */
export function applyToAttachments(
  record: IncidentRecord,
  attachments: Attachments,
  files: readonly DecidedFile[],
  profile: Profile,
  sender: SenderChoices,
): { readonly sections: Attachments; readonly fields: readonly DecidedField[] } {
  const names = namesToMask(record, profile);
  const fields: DecidedField[] = [];
  const sections: Record<string, JsonObject> = {};
  for (const [section, document] of Object.entries(attachments)) {
    const placed = (path: string) => ({
      kind: section === 'evidence' ? undefined : KINDS[`${section}/${path.split('/')[1] ?? ''}`],
    });
    const applied =
      section === 'evidence'
        ? applyToFiles(document, files, names, profile)
        : applySection({ section, document, placed, names }, profile, sender);
    fields.push(...applied.fields);
    if (applied.document !== undefined) sections[section] = applied.document;
  }
  return { sections, fields };
}

/** The lines about files: each follows what was decided about its file. */
function applyToFiles(
  document: JsonObject,
  files: readonly DecidedFile[],
  names: readonly string[],
  profile: Profile,
) {
  const going = new Map(
    files.filter(({ verdict }) => verdict.does !== 'stays').map((one) => [one.file.id, one] as const),
  );
  const listed = document['files'];
  const lines = Array.isArray(listed) ? listed.filter((line) => isJsonObject(line) && isIn(line, going)) : [];
  const placed = (path: string) => {
    const found = going.get(path.split('/')[2] ?? '');
    const bare = found?.verdict.does === 'masked' && METADATA.test(path);
    return { kind: bare || found === undefined ? undefined : LINE };
  };
  const open = { ...profile, decisions: { [LINE]: GOES } };
  return applySection({ section: 'evidence', document: { files: lines }, placed, names }, open, {
    choices: [],
    strangers: {},
  });
}

const LINE = 'line';
const GOES = { does: 'goes', reason: 'It describes a file that goes.' } as const;

function isIn(line: JsonObject, files: ReadonlyMap<string, DecidedFile>): boolean {
  return typeof line['id'] === 'string' && files.has(line['id']);
}
