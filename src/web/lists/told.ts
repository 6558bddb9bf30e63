import { dollars } from '../../../shared/quantity/cents.js';
import { tellDay } from './tell-day.js';
import type { FieldSpec, SpecOption, Thing } from './field-spec.js';

/** What a thing says in one of its fields, in words; null where it says nothing. */
export function told(spec: FieldSpec, thing: Thing): string | null {
  const value = thing[spec.name];
  if (value === undefined || value === null || value === '') return null;
  const words = wordsOf(spec, value);
  return words === '' ? null : spec.unit === undefined ? words : `${words} ${spec.unit}`;
}

/** The fields in which two versions of a thing differ, each with both in words. */
export function toldDifferences(specs: readonly FieldSpec[], before: Thing, now: Thing) {
  return specs
    .map((spec) => ({ spec, was: told(spec, before), is: told(spec, now) }))
    .filter(({ was, is }) => was !== is);
}

function wordsOf(spec: FieldSpec, value: unknown): string {
  switch (spec.as) {
    case 'one':
    case 'choice':
      return labelOf(spec.options, value);
    case 'several':
      return (value as readonly unknown[]).map((one) => labelOf(spec.options, one)).join(', ');
    case 'words':
      return (value as readonly string[]).join(', ');
    case 'items':
      return (value as readonly Thing[]).map((item) => tellItem(spec.fields, item)).join('; ');
    case 'dollars':
      return dollars(value as number);
    case 'day':
      return tellDay(value as string);
    default:
      return typeof value === 'string' ? value : JSON.stringify(value);
  }
}

function tellItem(specs: readonly FieldSpec[], item: Thing): string {
  return specs
    .map((spec) => told(spec, item))
    .filter((words) => words !== null)
    .join(', ');
}

function labelOf(options: readonly SpecOption[], value: unknown): string {
  return options.find((option) => option.value === value)?.label ?? JSON.stringify(value);
}
