import type { FieldError } from '../kernel/field-error.js';

/**
 * Faults in the order of their pointers, list positions by number, and only the first of each pointer.
 * @example sortFaults([{ pointer: '/a/10', detail: '' }, { pointer: '/a/9', detail: '' }])[0]?.pointer // '/a/9'
 */
export function sortFaults(faults: readonly FieldError[]): FieldError[] {
  const firsts = new Map<string, FieldError>();
  for (const fault of faults) if (!firsts.has(fault.pointer)) firsts.set(fault.pointer, fault);
  return [...firsts.values()]
    .map((fault) => ({ fault, tokens: fault.pointer.split('/') }))
    .sort((one, other) => compareTokens(one.tokens, other.tokens))
    .map(({ fault }) => fault);
}

function compareTokens(one: readonly string[], other: readonly string[]): number {
  for (const [index, token] of one.entries()) {
    const against = other[index];
    if (against === undefined) return 1;
    if (token !== against) return compareToken(token, against);
  }
  return one.length - other.length;
}

/** Positions come by number and before names; names by their characters. */
function compareToken(one: string, other: string): number {
  const [oneIsPosition, otherIsPosition] = [POSITION.test(one), POSITION.test(other)];
  if (oneIsPosition !== otherIsPosition) return oneIsPosition ? -1 : 1;
  const byNumber = oneIsPosition ? Number(one) - Number(other) : 0;
  return byNumber || (one < other ? -1 : 1);
}

const POSITION = /^\d+$/;
