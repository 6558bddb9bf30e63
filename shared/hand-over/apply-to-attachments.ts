import type { IncidentRecord } from '../record/incident-record.js';
import { isJsonObject, type JsonObject, type JsonValue } from '../record/json-value.js';
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

/** Single fields that tell something else than the rest of their item. */
const WITHIN: readonly (readonly [field: RegExp, kind: Attachment])[] = [
  [/^filings:\/filings\/[^/]+\/remark$/, 'decision'],
  [/^filings:\/(filings|operatorNotices)\/[^/]+\/by\/[a-z]+$/, 'author'],
];

/** What people wrote about a file, who brought it, and what the device wrote into it about place and time. */
const FILE_WORDS = /^\/files\/[^/]+\/(name|about\/caption)$/;
const FILE_AUTHOR = /^\/files\/[^/]+\/(receivedFrom|about\/takenBy)$/;
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
      owner: ownerOf(record, document, path),
      kind:
        WITHIN.find(([field]) => field.test(`${section}:${path}`))?.[1] ??
        KINDS[`${section}/${path.split('/')[1] ?? ''}`],
    });
    const applied =
      section === 'evidence'
        ? applyToFiles(document, files, names, profile, sender)
        : applySection({ section, document, placed, names }, profile, sender);
    fields.push(...applied.fields);
    if (applied.document !== undefined) sections[section] = applied.document;
  }
  return { sections, fields };
}

/** Whose own a notice is: of whoever drove the craft that it names. */
function ownerOf(record: IncidentRecord, document: JsonObject, path: string): string | undefined {
  const [, list = '', id] = path.split('/');
  const listed = list === 'operatorNotices' ? document[list] : undefined;
  const items: readonly JsonValue[] = Array.isArray(listed) ? listed : [];
  const vessel = items.filter(isJsonObject).find((one) => one['id'] === id)?.['vessel'];
  if (vessel === undefined) return undefined;
  const { people = [] } = record.sections.people ?? {};
  const drivers = people.filter(({ role, craft }) => role?.value === 'operator' && craft === vessel);
  return drivers.length === 1 ? drivers[0]?.id : undefined;
}

/** The lines about files: each follows what was decided about its file, and words and names in it their own kinds. */
function applyToFiles(
  document: JsonObject,
  files: readonly DecidedFile[],
  names: readonly string[],
  profile: Profile,
  sender: SenderChoices,
) {
  const going = new Map(
    files.filter(({ verdict }) => verdict.does !== 'stays').map((one) => [one.file.id, one] as const),
  );
  const listed = document['files'];
  const lines = Array.isArray(listed) ? listed.filter((line) => isJsonObject(line) && isIn(line, going)) : [];
  const placed = (path: string) => {
    const found = going.get(path.split('/')[2] ?? '');
    const bare = found?.verdict.does === 'masked' && METADATA.test(path);
    if (bare || found === undefined) return { kind: undefined };
    return { kind: FILE_WORDS.test(path) ? 'file-words' : FILE_AUTHOR.test(path) ? 'author' : LINE };
  };
  const open = { ...profile, decisions: { ...profile.decisions, [LINE]: GOES } };
  // Id and SHA-256 are not for choice: without them nobody could tell which file the log vouches for.
  const choices = sender.choices.filter(
    ({ what }) => !what.startsWith('evidence:') || isOfPeople(what.slice('evidence:'.length)),
  );
  const section = { section: 'evidence', document: { files: lines }, placed, names };
  return applySection(section, open, { ...sender, choices });
}

const isOfPeople = (path: string): boolean => FILE_WORDS.test(path) || FILE_AUTHOR.test(path);
const LINE = 'line';
const GOES = { does: 'goes', reason: 'It describes a file that goes.' } as const;

function isIn(line: JsonObject, files: ReadonlyMap<string, DecidedFile>): boolean {
  return typeof line['id'] === 'string' && files.has(line['id']);
}
