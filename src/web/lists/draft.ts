import { toCents } from '../../../shared/quantity/cents.js';
import type { Draft, DraftValue, FieldSpec, Thing } from './field-spec.js';

/** What a form shows of a thing; empty fields of a new one. */
export function draftOf(specs: readonly FieldSpec[], thing: Thing = {}): Draft {
  const idOf = typeof thing['id'] === 'string' ? { id: thing['id'] } : {};
  return {
    ...idOf,
    ...Object.fromEntries(specs.map((spec) => [spec.name, draftValue(spec, thing[spec.name])])),
  };
}

/** What is sent of a form: what was left empty is left out. */
export function bodyOf(specs: readonly FieldSpec[], draft: Draft): Thing {
  return Object.fromEntries(
    specs.flatMap((spec) => {
      const value = sentValue(spec, draft[spec.name]);
      return value === undefined ? [] : [[spec.name, value] as const];
    }),
  );
}

/** What is sent of a change in part: what is different, and null for what was emptied. */
export function changeOf(specs: readonly FieldSpec[], before: Thing, draft: Draft): Thing {
  const now = bodyOf(specs, draft);
  const was = bodyOf(specs, draftOf(specs, before));
  return Object.fromEntries(
    specs
      .filter(({ name }) => JSON.stringify(now[name]) !== JSON.stringify(was[name]))
      .map(({ name }) => [name, now[name] ?? null]),
  );
}

function draftValue(spec: FieldSpec, value: unknown): DraftValue {
  switch (spec.as) {
    case 'several':
      return Array.isArray(value) ? value.map(String) : [];
    case 'items':
      return Array.isArray(value) ? value.map((item) => draftOf(spec.fields, item as Thing)) : [];
    case 'words':
      return Array.isArray(value) ? value.join(', ') : '';
    case 'dollars':
      return typeof value === 'number' ? String(value / 100) : '';
    default:
      return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
  }
}

function sentValue(spec: FieldSpec, value: DraftValue = ''): unknown {
  if (spec.as === 'several') return value;
  if (spec.as === 'items') return (value as readonly Draft[]).map((item) => itemBody(spec.fields, item));
  const text = (value as string).trim();
  if (spec.as === 'words') return listed(text, spec.required === true);
  if (text === '') return undefined;
  if (spec.as === 'number') return figure(text);
  // What is no figure goes as it was typed: the service then names the field.
  if (spec.as === 'dollars') return typeof figure(text) === 'number' ? toCents(Number(text)) : text;
  return spec.as === 'password' ? value : text;
}

function itemBody(specs: readonly FieldSpec[], item: Draft): Thing {
  return { id: item['id'], ...bodyOf(specs, item) };
}

function listed(text: string, required: boolean): readonly string[] | undefined {
  const words = text
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
  return words.length > 0 || required ? words : undefined;
}

function figure(text: string): number | string {
  const number = Number(text.replaceAll(',', ''));
  return Number.isFinite(number) ? number : text;
}
