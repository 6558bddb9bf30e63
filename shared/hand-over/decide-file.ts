import { evidenceIsRestricted } from '../record/evidence-restriction.js';
import type { EvidenceFile } from '../record/evidence-section.js';
import type { IncidentRecord } from '../record/incident-record.js';
import { decideItem, type Verdict } from './decide-item.js';
import type { Attachment, Masking, Profile } from './hand-over-profile.js';
import type { Region, SenderChoices } from './sender-choices.js';

/** A file with what becomes of it. */
export interface DecidedFile {
  readonly file: EvidenceFile;
  readonly kind: Attachment;
  readonly verdict: Verdict;
  /** Parts to blur in the copy that leaves; none where the original does. */
  readonly blur: readonly Region[];
}

/** What a file is among the things that are filed, where it is one. */
export interface FiledCopies {
  /** Ids of files that are copies of reports which were made. */
  readonly copies: ReadonlySet<string>;
  /** Ids of files that show a paper by which somebody asked for records. */
  readonly requests: ReadonlySet<string>;
}

/**
 * Decides one file. A picture or video that leaves for somebody who is not to see strangers leaves only once a person
 * has looked for them: a picture blurred where they are, a video only if there are none.
 */
export function decideFile(
  file: EvidenceFile,
  record: IncidentRecord,
  filed: FiledCopies,
  profile: Profile,
  sender: SenderChoices,
): DecidedFile {
  const kind = kindOf(file, record, filed);
  const owner = ownerOf(file, record);
  if (file.withdrawn !== undefined) return stays(file, kind, 'Its content was withdrawn.');
  const verdict = decideItem({ kind, id: file.id, owner }, profile, sender);
  if (verdict.does === 'stays') return { file, kind, verdict, blur: [] };
  if (masking(verdict) === 'no-metadata' && !isPicture(file)) {
    return stays(file, kind, 'No copy of it can be made without what the device wrote into it.');
  }
  if (file.kind !== 'photo' && file.kind !== 'video') return { file, kind, verdict, blur: [] };
  const strangers = decideItem({ kind: 'stranger', id: `stranger:${file.id}` }, profile, sender);
  if (strangers.does === 'goes') return { file, kind, verdict, blur: [] };
  const blur = sender.strangers[file.id];
  if (blur === undefined) return stays(file, kind, NOBODY_LOOKED);
  if (blur.length === 0) return { file, kind, verdict, blur };
  if (!isPicture(file)) return stays(file, kind, `Strangers can be seen in it. ${strangers.reason}`);
  return {
    file,
    kind,
    verdict: { does: 'masked', how: 'blurred', reason: strangers.reason, by: strangers.by },
    blur,
  };
}

const NOBODY_LOOKED = 'Nobody has looked yet whether strangers can be seen in it.';

/** Types of which a copy can be made. */
const PICTURES = ['image/jpeg', 'image/png', 'image/webp', 'image/tiff', 'image/avif'];

function isPicture({ type }: EvidenceFile): boolean {
  return PICTURES.includes(type);
}

function masking(verdict: Verdict): Masking | undefined {
  return verdict.does === 'masked' ? verdict.how : undefined;
}

function stays(file: EvidenceFile, kind: Attachment, reason: string): DecidedFile {
  return { file, kind, verdict: { does: 'stays', reason, by: 'profile' }, blur: [] };
}

function kindOf(file: EvidenceFile, record: IncidentRecord, { copies, requests }: FiledCopies): Attachment {
  if (requests.has(file.id)) return 'request';
  if (copies.has(file.id)) return 'filed-report';
  if (file.about.statement !== undefined) return 'statement-original';
  if (evidenceIsRestricted(file, record.sections.people ?? {})) return 'restricted-file';
  return file.kind;
}

/** Whoever gave the statement that it is the original of. */
function ownerOf({ about }: EvidenceFile, record: IncidentRecord): string | undefined {
  const { statements = [] } = record.sections.statements ?? {};
  return statements.find(({ id }) => id === about.statement)?.person;
}
