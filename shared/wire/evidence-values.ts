import { words } from './fleet-values.js';
import type { ValueRule } from './record-members.js';
import { id, listOf } from './record-values.js';

const SHA256 = /^[\da-f]{64}$/;
const DIGEST = 'the SHA-256 of the file as 64 small hexadecimal digits';
export const sha256: ValueRule = {
  expected: DIGEST,
  faultOf: (value) => (typeof value === 'string' && SHA256.test(value) ? null : `Must be ${DIGEST}.`),
  schema: { type: 'string', pattern: SHA256.source },
};

const SIZE = 'the size of the file in bytes, 1 or more';
export const fileSize: ValueRule = {
  expected: SIZE,
  faultOf: (value) => (Number.isSafeInteger(value) && Number(value) > 0 ? null : `Must be ${SIZE}.`),
  schema: { type: 'integer', minimum: 1 },
};

const MEDIA_TYPE = 'a media type, such as image/jpeg';
export const mediaType: ValueRule = {
  expected: MEDIA_TYPE,
  faultOf: (value) =>
    typeof value === 'string' && value.length <= 200 && /^[\w.+-]+\/[\w.+-]+( *;[ -~]*)?$/.test(value)
      ? null
      : `Must be ${MEDIA_TYPE}.`,
  schema: { type: 'string', examples: ['image/jpeg'] },
};

/** Ids of people, craft or files of the record. */
export const ids = listOf(id, 'ids');

export const fileName = words('the name of the file', 255);
