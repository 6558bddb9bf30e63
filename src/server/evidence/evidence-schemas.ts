import { EVIDENCE_KINDS } from '../../../shared/record/evidence-kind.js';
import { CustodyItemDto, HandOverDto } from '../../../shared/wire/evidence-custody.dto.js';
import {
  ChangeEvidenceDto,
  EvidenceWordsDto,
  StartUploadDto,
  WithdrawEvidenceDto,
} from '../../../shared/wire/evidence-file.dto.js';
import { OutsideEvidenceDto } from '../../../shared/wire/evidence-outside.dto.js';
import type { Shape } from '../../../shared/wire/record-members.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';
import * as example from './evidence-examples.js';

type Schema = Record<string, unknown>;

const text: Schema = { type: 'string' };
const listOf = (items: Schema): Schema => ({ type: 'array', items });
const ref = (name: string): Schema => ({ $ref: `#/components/schemas/${name}` });
const id: Schema = { type: 'string', format: 'uuid' };
const version: Schema = { type: 'integer', minimum: 1, description: 'Also sent as ETag.' };
const instant: Schema = { type: 'string', format: 'date-time' };
const bytes: Schema = { type: 'integer', minimum: 0, description: 'Bytes.' };

/** An object of exactly these members; a name that ends in `?` may be left out. */
function members(properties: Record<string, Schema>, ...examples: object[]): Schema {
  const names = Object.keys(properties);
  return {
    type: 'object',
    additionalProperties: false,
    required: names.filter((name) => !name.endsWith('?')),
    properties: Object.fromEntries(names.map((name) => [name.replace('?', ''), properties[name]])),
    ...(examples.length > 0 ? { examples } : {}),
  };
}

const withExamples = (shape: Shape, ...examples: object[]): Schema => ({ ...schemaOf(shape), examples });

/** What was sent, and more beside it. */
function shown(shape: Shape, beside: Record<string, Schema>, ...examples: object[]): Schema {
  const sent = schemaOf(shape) as { required?: string[]; properties: Record<string, Schema> };
  const more = members(beside) as { required: string[]; properties: Record<string, Schema> };
  return {
    type: 'object',
    additionalProperties: false,
    required: [...more.required, ...(sent.required ?? [])],
    properties: { ...sent.properties, ...more.properties },
    ...(examples.length > 0 ? { examples } : {}),
  };
}

const receipt = {
  id,
  version,
  kind: { type: 'string', enum: [...EVIDENCE_KINDS] },
  type: { ...text, description: 'Media type by content.' },
  size: bytes,
  sha256: { type: 'string', pattern: '^[0-9a-f]{64}$' },
  receivedAt: instant,
};

const withdrawn = members({ at: instant, by: text, reason: text, 'counsel?': text, 'directedOn?': text });
const captured = members({
  'local?': { ...text, description: "By the camera's own clock." },
  'offset?': text,
  'latitude?': { type: 'number' },
  'longitude?': { type: 'number' },
});
const handOvers = listOf(shown(HandOverDto, { id }));
const kept = { id, version, gaps: listOf(text) };

/** Bodies and answers of evidence by the names that its routes give them. */
export const EVIDENCE_SCHEMAS: Readonly<Record<string, Schema>> = {
  EvidenceUploadDetails: withExamples(StartUploadDto, example.UPLOAD_SENT),
  EvidenceUpload: members(
    { id, version, size: bytes, offset: bytes, longestPiece: bytes, startedAt: instant },
    example.UPLOAD_SHOWN,
  ),
  EvidenceReceipt: members(receipt, example.RECEIPT),
  EvidenceFile: members(
    {
      ...receipt,
      'declaredType?': text,
      'name?': text,
      receivedFrom: text,
      about: schemaOf(EvidenceWordsDto),
      'captured?': captured,
      'withdrawn?': withdrawn,
      isRestricted: { type: 'boolean' },
      questions: listOf(members({ code: text, text })),
      previews: listOf({ type: 'integer', description: 'Longer edge in pixels.' }),
    },
    example.FILE_SHOWN,
  ),
  EvidenceList: members({
    files: listOf(ref('EvidenceFile')),
    restricted: { type: 'integer', description: 'How many more there are that you do not see.' },
    arriving: listOf(ref('EvidenceUpload')),
  }),
  EvidenceChange: withExamples(ChangeEvidenceDto, {
    about: example.ABOUT,
    reason: 'Says which craft it shows',
  }),
  EvidenceWithdrawal: withExamples(WithdrawEvidenceDto, { reason: 'A photograph of another family' }),
  CustodyItemDetails: withExamples(CustodyItemDto, example.ITEM_SENT),
  CustodyItem: shown(CustodyItemDto, { ...kept, 'handOvers?': handOvers }, example.ITEM_SHOWN),
  CustodyItems: members({ items: listOf(ref('CustodyItem')) }),
  HandOverDetails: withExamples(HandOverDto, example.HAND_OVER_SENT),
  OutsideEvidenceDetails: withExamples(OutsideEvidenceDto, example.OUTSIDE_SENT),
  OutsideEvidence: shown(OutsideEvidenceDto, kept, example.OUTSIDE_SHOWN),
  OutsideEvidenceItems: members({ items: listOf(ref('OutsideEvidence')) }),
};
