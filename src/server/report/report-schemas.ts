import { SECTION_NAMES } from '../../../shared/record/incident-record.js';
import { ITEM_STATES, REPORTERS } from '../../../shared/report/filled-report.js';
import { NOTICE_LANGUAGES } from '../../../shared/report/renter-notice.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';
import { ReportNotesDto } from '../../../shared/wire/report-requests.dto.js';

type Schema = Record<string, unknown>;

const text = { type: 'string' };
const maybeText = { type: ['string', 'null'] };
const instant = { type: 'string', format: 'date-time' };
const maybeInstant = { ...instant, type: ['string', 'null'] };
const count = { type: 'integer', minimum: 0 };
const texts = { type: 'array', items: text };
const path = { ...text, description: 'Field of the section; empty for the section as a whole.' };

const object = (properties: Record<string, Schema>): Schema => ({
  type: 'object',
  required: Object.keys(properties),
  properties,
});
const listOf = (items: Schema): Schema => ({ type: 'array', items });

const HEAD = {
  id: { ...text, examples: ['c1.owner'] },
  craft: { ...maybeText, description: 'Id of the craft; null while none is named.' },
  reporter: { enum: REPORTERS },
  vessel: text,
  customerWrites: {
    type: 'boolean',
    description: 'A customer drove: account, opinion and what concerns others is left to them.',
  },
  counts: object({ answered: count, unknown: count, missing: count }),
};

const DUTY = object({
  duty: { ...text, examples: ['us-tx/accident-report'] },
  jurisdiction: text,
  outcome: { enum: ['required', 'not-required', 'undetermined'] },
  dueAt: maybeInstant,
  dueAtIfRequired: maybeInstant,
  authority: maybeText,
  state: text,
  reporter: object({ who: text, text }),
});

const ITEM = object({
  id: { ...text, examples: ['6', 'WI-gear'] },
  citation: text,
  words: text,
  basis: { enum: ['read', 'read-old-text', 'memory'] },
  state: { enum: ITEM_STATES, description: 'Exactly one of them; unknown: known not to be known.' },
  lines: listOf(
    object({
      label: text,
      subject: maybeText,
      state: { enum: ITEM_STATES },
      text,
      source: { ...maybeText, description: 'As told by whom, or how it is known.' },
      section: { enum: [...SECTION_NAMES, null] },
      path,
    }),
  ),
});

const NOTES_EXAMPLE = {
  submitter: { name: 'Mia Torres', address: '1 Dock Road, Denison TX 75020', phone: '903-555-0100' },
  notKnown: [{ id: '7', why: 'Nobody measured the water, and the gauge was out of order.' }],
};

/** What the reports are asked and what they answer, for the API's document. */
export const REPORT_SCHEMAS = {
  ReportList: object({ asOf: instant, items: listOf(object({ ...HEAD, duties: listOf(DUTY) })) }),
  FilledReport: object({
    ...HEAD,
    items: listOf(ITEM),
    stateItems: listOf(ITEM),
    duties: listOf(DUTY),
    reference: text,
    asOf: instant,
    timeZone: text,
    citation: text,
    readOn: { ...text, format: 'date' },
    doubts: texts,
    cautions: texts,
    opinionCaution: text,
    notesVersion: count,
    printed: listOf(
      object({
        id: text,
        report: text,
        paper: { enum: ['worksheet', 'notice'] },
        by: object({ account: text, person: text, role: text }),
        at: instant,
        content: { ...text, description: 'SHA-256 of what was printed, as canonical JSON.' },
      }),
    ),
  }),
  ReportLacks: object({
    asOf: instant,
    items: listOf(
      object({
        section: { enum: SECTION_NAMES },
        lacks: listOf(
          object({
            item: text,
            citation: text,
            label: text,
            subject: maybeText,
            state: { enum: ['unknown', 'missing'] },
            text,
            path,
            reports: texts,
          }),
        ),
      }),
    ),
  }),
  RenterNotices: object({
    report: text,
    vessel: text,
    recipient: { enum: ['operator', 'guardian'] },
    asOf: instant,
    minds: { ...texts, description: 'What to mind before it is given.' },
    notices: listOf(
      object({
        language: { enum: NOTICE_LANGUAGES },
        title: text,
        to: text,
        about: text,
        urgent: text,
        duties: listOf(object({ law: text, when: text, where: text })),
        parts: listOf(object({ title: text, text })),
        given: text,
      }),
    ),
    recordAt: { ...text, description: 'Where it is recorded that the operator was told.' },
  }),
  ReportNotes: { ...schemaOf(ReportNotesDto), examples: [NOTES_EXAMPLE] },
  KeptReportNotes: {
    type: 'object',
    required: ['id', 'version'],
    properties: {
      id: text,
      version: count,
      submitter: { type: 'object', properties: { name: text, address: text, phone: text } },
      opinion: object({ text, alcoholOrDrugs: { enum: ['yes', 'no', 'unknown'] }, by: text, at: instant }),
      notKnown: listOf(object({ id: text, why: text, by: text, at: instant })),
    },
  },
};
