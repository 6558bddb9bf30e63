import { utf8ToBytes } from '@noble/hashes/utils.js';
import { jsonPointer } from '../kernel/json-pointer.js';
import { UnprovableError } from './unprovable-error.js';

/** The plain values that can be committed to. */
export type JsonValue =
  null | boolean | number | string | readonly JsonValue[] | { readonly [key: string]: JsonValue };

type Path = readonly (string | number)[];

/** Deeper values are refused: it stops a value that contains itself, and nothing in a record is so deep. */
const MAX_DEPTH = 100;

/** Half of a UTF-16 pair standing alone; with the `u` flag a whole pair does not match. */
const LONE_SURROGATE = /\p{Surrogate}/u;

/**
 * The one JSON text of a plain value, by RFC 8785 (JCS): no white space, object keys in the order of their
 * UTF-16 code units (section 3.2.3), numbers and strings as ECMAScript writes them (sections 3.2.2.2 and
 * 3.2.2.3; minus zero is 0). Throws an `UnprovableError` for anything that JSON cannot carry unchanged:
 * undefined, NaN, infinities, big integers, functions, symbols, instances of classes, ill-formed Unicode.
 * @example canonicalJson({ b: 1.0, a: 'é' }) // '{"a":"é","b":1}'
 */
export function canonicalJson(value: unknown): string {
  return write(value, []);
}

/**
 * The same text in UTF-8, ready to be hashed (RFC 8785 section 3.2.4).
 * @example canonicalBytes('é') // the bytes 22 c3 a9 22
 */
export function canonicalBytes(value: unknown): Uint8Array {
  return utf8ToBytes(canonicalJson(value));
}

function write(value: unknown, path: Path): string {
  switch (typeof value) {
    case 'boolean':
      return String(value);
    case 'string':
      return writeString(value, path);
    case 'number':
      if (!Number.isFinite(value)) throw refuse(path, `${String(value)} is not a JSON number.`);
      return JSON.stringify(value);
    case 'object':
      if (path.length >= MAX_DEPTH) {
        throw refuse(path, `It is nested more than ${MAX_DEPTH} levels deep, or contains itself.`);
      }
      return value === null ? 'null' : writeStructure(value, path);
    case 'undefined':
      throw refuse(path, 'It is undefined: leave the key out, or say null.');
    default:
      throw refuse(path, `A ${typeof value} is not a JSON value.`);
  }
}

function writeStructure(value: object, path: Path): string {
  if (Array.isArray(value)) {
    // Array.from visits holes too, as undefined, which is refused.
    return `[${Array.from<unknown, string>(value, (item, index) => write(item, [...path, index])).join(',')}]`;
  }
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) {
    throw refuse(path, 'It is an instance of a class: turn it into plain values first.');
  }
  const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${members.map(([key, item]) => `${writeString(key, path)}:${write(item, [...path, key])}`).join(',')}}`;
}

/** ECMAScript's own escaping is the one that RFC 8785 section 3.2.2.2 prescribes, once the text is well-formed. */
function writeString(text: string, path: Path): string {
  if (LONE_SURROGATE.test(text)) throw refuse(path, 'The text holds half a character (a lone surrogate).');
  return JSON.stringify(text);
}

function refuse(path: Path, problem: string): UnprovableError {
  return new UnprovableError(jsonPointer(path), problem);
}
