import {
  DUE_BASES,
  REQUEST_COURTS,
  REQUEST_KINDS,
  REQUEST_WAYS,
} from '../../../shared/record/legal-request.js';
import type { FieldSpec } from '../lists/field-spec.js';
import { requests as say } from '../words/requests.js';

const { form, kinds, ways, courts, bases } = say;

const optionsOf = <Value extends string>(values: readonly Value[], words: Record<Value, string>) =>
  values.map((value) => ({ value, label: words[value] }));

export const KIND: FieldSpec = {
  name: 'kind',
  label: form.kind,
  as: 'one',
  options: optionsOf(REQUEST_KINDS, kinds),
  none: form.choose,
  required: true,
};

export const CAME: readonly FieldSpec[] = [
  {
    name: 'way',
    label: form.way,
    as: 'one',
    options: optionsOf(REQUEST_WAYS, ways),
    none: form.choose,
    required: true,
  },
  { name: 'receivedBy', label: form.receivedBy, as: 'line', required: true },
];

export const WHO: readonly FieldSpec[] = [
  { name: 'from', label: form.from, as: 'line', required: true },
  { name: 'organization', label: form.organization, as: 'line' },
  { name: 'onBehalfOf', label: form.onBehalfOf, as: 'line' },
  { name: 'address', label: form.address, as: 'text', rows: 2 },
  { name: 'phone', label: form.phone, as: 'phone' },
  { name: 'mail', label: form.mail, as: 'mail' },
];

export const WHAT: readonly FieldSpec[] = [
  { name: 'asked', label: form.asked, hint: form.askedHint, as: 'text', rows: 4 },
  { name: 'people', label: form.people, as: 'words' },
  { name: 'craft', label: form.craft, as: 'words' },
  { name: 'periodFrom', label: form.periodFrom, as: 'day' },
  { name: 'periodThrough', label: form.periodThrough, as: 'day' },
];

export const COURT: readonly FieldSpec[] = [
  { name: 'court', label: form.court, as: 'choice', options: optionsOf(REQUEST_COURTS, courts) },
  { name: 'courtName', label: form.courtName, as: 'line' },
  { name: 'docket', label: form.docket, as: 'line' },
];

export const DUE_DAY: FieldSpec = { name: 'dueDay', label: form.dueDay, as: 'day', required: true };
export const DUE_BASIS: FieldSpec = {
  name: 'dueBasis',
  label: form.dueBasis,
  as: 'choice',
  options: optionsOf(DUE_BASES, bases),
};

export const COUNSEL: FieldSpec = { name: 'counsel', label: form.counsel, as: 'line' };

/** The account of whoever sees to it; its options are those that there are. */
export const handlerSpec = (people: readonly { id: string; name: string }[]): FieldSpec => ({
  name: 'handler',
  label: form.handler,
  as: 'one',
  options: people.map(({ id, name }) => ({ value: id, label: name })),
  none: form.nobody,
});

/** Every field that holds plain text, for what stands in them at first and what is sent. */
export const ALL_SPECS: readonly FieldSpec[] = [
  KIND,
  ...CAME,
  ...WHO,
  ...WHAT,
  ...COURT,
  DUE_DAY,
  DUE_BASIS,
  COUNSEL,
  handlerSpec([]),
];
