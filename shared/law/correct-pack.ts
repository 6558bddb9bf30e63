import type { FieldError } from '../kernel/field-error.js';
import { packCode } from './pack-code.js';
import type { Correction, RulePack } from './rule-pack.js';

/** One correction of a business, as its file holds it: which pack, and each value with what stood there. */
export interface CorrectionFile extends Correction {
  /** Code of the pack: `TX`, `US-OIL-DISCHARGE`. */
  readonly pack: string;
  readonly changes: readonly { readonly pointer: string; readonly from: unknown; readonly to: unknown }[];
}

/**
 * A pack with a correction laid on a copy of it. Each change names what it replaces: where the shipped pack says
 * something else by now, the correction is refused instead of undoing what was read since.
 * @example correctPack(texas, { …, changes: [{ pointer: '/reportConfidential', from: 'unknown', to: 'yes' }] })
 */
export function correctPack(
  pack: RulePack,
  { on, by, citation, note, changes }: CorrectionFile,
): { pack: RulePack } | { errors: FieldError[] } {
  const copy = structuredClone(pack);
  const errors = changes.flatMap(({ pointer, from, to }, index): FieldError[] => {
    const at = `/changes/${index}`;
    const tokens = pointer.split('/').slice(1).map(unescape);
    const last = tokens.pop();
    const holder = tokens.reduce<unknown>((value, token) => memberOf(value, token), copy);
    if (last === undefined || typeof holder !== 'object' || holder === null || !Object.hasOwn(holder, last)) {
      return [{ pointer: `${at}/pointer`, detail: `${packCode(pack)} has no ${pointer}` }];
    }
    const members = holder as Record<string, unknown>;
    if (JSON.stringify(members[last]) !== JSON.stringify(from)) {
      const detail = `${packCode(pack)} says ${JSON.stringify(members[last])} there: read it again, and correct that`;
      return [{ pointer: `${at}/from`, detail }];
    }
    members[last] = to;
    return [];
  });
  if (errors.length > 0) return { errors };
  return { pack: { ...copy, corrections: [...(pack.corrections ?? []), { on, by, citation, note }] } };
}

function memberOf(value: unknown, token: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, token)
    ? (value as Record<string, unknown>)[token]
    : undefined;
}

/** RFC 6901. */
function unescape(token: string): string {
  return token.replaceAll('~1', '/').replaceAll('~0', '~');
}
