import type { EvidenceWords } from '../record/evidence-section.js';
import { type Shot, SHOTS } from '../record/shots.js';
import { fileName, fileSize, ids, mediaType, sha256 } from './evidence-values.js';
import { account, words } from './fleet-values.js';
import { isObject } from './is-object.js';
import { Needed, Part, Value, type ValueRule } from './record-members.js';
import { day, id, line, oneOf, yesOrNo } from './record-values.js';

/** What people say about a file, whole: what is left out is no longer said. */
export class EvidenceWordsDto implements EvidenceWords {
  /** What it shows. */
  @Value(account('what it shows', 2000))
  caption?: string;

  @Value(line)
  takenBy?: string;

  /** Ids of the people it shows; an empty list says that it shows nobody. */
  @Value(ids)
  people?: string[];

  @Value(ids)
  craft?: string[];

  /** Which picture of the list for a craft it is. */
  @Value(oneOf(SHOTS))
  shot?: Shot;

  /** Id of the statement that it is the original of. */
  @Value(id)
  statement?: string;

  /** Left out, it follows from what the file shows. */
  @Value(yesOrNo)
  restricted?: boolean;
}

const ABOUT: ValueRule = {
  expected: 'what is said about the file, as an object',
  faultOf: (value) => (isObject(value) ? null : 'Must be what is said about the file, as an object.'),
  schema: {},
  part: () => EvidenceWordsDto,
};

/** Announces a file before its bytes are sent. */
export class StartUploadDto {
  @Needed(fileSize)
  size: number;

  @Value(fileName)
  name?: string;

  /** Compared with the content, and never believed. */
  @Value(mediaType)
  type?: string;

  /** As the device read the file: bytes that changed on the way are not taken. */
  @Value(sha256)
  sha256?: string;

  @Part(() => EvidenceWordsDto)
  about?: EvidenceWords;
}

export class ChangeEvidenceDto {
  @Needed(ABOUT)
  about: EvidenceWords;

  @Needed(account('the reason', 2000))
  reason: string;
}

/** Takes the content of a wrong file out; hash, size and reason stay. */
export class WithdrawEvidenceDto {
  @Needed(account('the reason', 2000))
  reason: string;

  /** Name of the lawyer who directed it: needed, with the day, while a hold is on. */
  @Value(words('the name of the lawyer'))
  counsel?: string;

  @Value(day)
  directedOn?: string;
}
