import type { FieldSpec } from '../lists/field-spec.js';
import { fleet } from '../words/fleet.js';
import type { NamedPhotograph } from './use-photographs.js';

const { step: say, units } = fleet;

const reason: FieldSpec = { name: 'reason', label: say.reason, as: 'line', required: true };
const receipt: FieldSpec = { name: 'receipt', label: say.receipt, as: 'line' };
const hourMeter: FieldSpec = { name: 'hourMeter', label: say.hourMeter, as: 'number', unit: units.hours };

/** Ticked from the evidence where there is some, otherwise named by hand. */
function photographsOf(known: readonly NamedPhotograph[]): FieldSpec {
  const shared = { name: 'photographs', label: say.photographs };
  return known.length > 0
    ? { ...shared, as: 'several', options: known, none: '' }
    : { ...shared, hint: say.photographsHint, as: 'words' };
}

/** What is asked at each step. */
export const stepSpecs = {
  'taken-out': [reason],
  'do-not-start': [reason],
  'start-allowed': [reason],
  photographed: (known: readonly NamedPhotograph[]): FieldSpec[] => [
    { ...photographsOf(known), required: true },
  ],
  released: (known: readonly NamedPhotograph[]): FieldSpec[] => [
    photographsOf(known),
    { name: 'remark', label: say.remark, as: 'line' },
  ],
  cleared: [
    {
      name: 'by',
      label: say.by,
      as: 'choice',
      options: [
        { value: 'insurer', label: say.insurer },
        { value: 'counsel', label: say.counsel },
      ],
      required: true,
    },
    { name: 'person', label: say.person, as: 'line', required: true },
    { name: 'how', label: say.how, hint: say.howHint, as: 'line', required: true },
    { name: 'reference', label: say.reference, as: 'line' },
  ] satisfies FieldSpec[],
  'held-by-agency': [
    { name: 'agency', label: say.agency, as: 'line', required: true },
    { name: 'officer', label: say.officer, as: 'line' },
    { name: 'badge', label: say.badge, as: 'line' },
    receipt,
    photographsOf([]),
    hourMeter,
    { name: 'keptWhere', label: say.keptWhere, as: 'line' },
  ] satisfies FieldSpec[],
  'returned-by-agency': [
    { name: 'handedOverBy', label: say.handedOverBy, as: 'line' },
    receipt,
    photographsOf([]),
    hourMeter,
  ] satisfies FieldSpec[],
};
