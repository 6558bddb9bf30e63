import { ValidateBy, ValidateIf } from 'class-validator';
import { suggestWord } from './suggest-word.js';

/** What is wrong with a value, and how to put it right; null when nothing is. */
export type FaultOf = (value: unknown) => string | null;

/** Carried by a list's rule, so that the reader can ask which items are at fault. */
export interface ListContext {
  readonly itemFault: FaultOf;
}

/**
 * A member that must be there and that `faultOf` accepts.
 * @param expected what to give, for the message when it is missing: `'text'`
 */
export function Fact(expected: string, faultOf: FaultOf): PropertyDecorator {
  return ValidateBy({
    name: 'fact',
    validator: {
      validate: (value: unknown) => faultOf(value) === null,
      defaultMessage: (rule) =>
        rule?.value === undefined
          ? `Missing: give ${expected}.`
          : (faultOf(rule.value) ?? `Must be ${expected}.`),
    },
  });
}

/** The member may be left out; when it is there, its other rules hold. */
export function MayBeAbsent(): PropertyDecorator {
  return ValidateIf((_, value) => value !== undefined);
}

/** The member may be left out or null, where null says "not known". */
export function MayBeNull(): PropertyDecorator {
  return ValidateIf((_, value) => value !== undefined && value !== null);
}

/** A list whose items are each accepted by `itemFault`. */
export function ListOf(what: string, itemFault: FaultOf): PropertyDecorator {
  const context: ListContext = { itemFault };
  return ValidateBy(
    {
      name: 'list',
      validator: {
        validate: (value: unknown) => Array.isArray(value) && value.every((item) => itemFault(item) === null),
        defaultMessage: (rule) =>
          `${rule?.value === undefined ? 'Missing: give' : 'Must be'} a list of ${what}.`,
      },
    },
    { context },
  );
}

/** One of a few words; a slip gets the nearest one suggested. */
export function OneOf(words: readonly string[]): PropertyDecorator {
  return Fact(`one of ${words.join(', ')}`, wordFault(words, `one of ${words.join(', ')}`));
}

/** Yes, no or unknown. */
export function TernaryFact(): PropertyDecorator {
  return OneOf(['yes', 'no', 'unknown']);
}

export function TextFact(): PropertyDecorator {
  return Fact('text', textFault);
}

/** What the item is called by in this document; any text that no other item of its list has. */
export function IdFact(): PropertyDecorator {
  return Fact('an id as text, such as p1, that no other item of the list has', textFault);
}

export function BooleanFact(): PropertyDecorator {
  return Fact('true or false', (value) => (typeof value === 'boolean' ? null : 'Must be true or false.'));
}

/** A finite number between two bounds, both included. */
export function NumberFact(low: number, high: number, expected: string): PropertyDecorator {
  return Fact(expected, numberFault(low, high, expected));
}

/** A list of objects; the reader looks at each of them with its own class. */
export function ObjectsFact(what: string): PropertyDecorator {
  return Fact(`a list of ${what}`, (value) => (Array.isArray(value) ? null : `Must be a list of ${what}.`));
}

/** `textFault(3)` is `'Must be text.'`. */
export function textFault(value: unknown): string | null {
  return typeof value === 'string' ? null : 'Must be text.';
}

/** Judges a word by a list: `wordFault(['vessel'], 'a kind of thing')('vesel')` suggests `vessel`. */
export function wordFault(words: readonly string[], expected: string): FaultOf {
  return (value) => {
    if (typeof value !== 'string') return `Must be ${expected}.`;
    if (words.includes(value)) return null;
    const near = suggestWord(value, words);
    return `Must be ${expected}.${near === null ? '' : ` Did you mean ${near}?`}`;
  };
}

/** `numberFault(0, 10, 'a number up to 10')(11)` is `'Must be a number up to 10.'`. */
export function numberFault(low: number, high: number, expected: string): FaultOf {
  return (value) =>
    typeof value === 'number' && Number.isFinite(value) && value >= low && value <= high
      ? null
      : `Must be ${expected}.`;
}
