import { valueOf } from '../call/known.js';
import { chooseSubjects } from './choose-subjects.js';
import { fillBands } from './fill-bands.js';
import { fillLine } from './fill-line.js';
import { countItems, type FilledItem, type FilledReport, type ReportLine, worstOf } from './filled-report.js';
import type { FormBands, ReportForm, ReportItem, ReportPart } from './report-form.js';
import type { ReportMatter } from './report-matter.js';

/**
 * One report of one vessel and reporter, as far as the record tells: each item answered, known not to be known, or
 * missing. Same record, notes and form, same report.
 * @example fillReport(form, matterOfABareCall).counts.missing > 0 // true
 */
export function fillReport(form: ReportForm, matter: ReportMatter): FilledReport {
  const states = statesConcerned(matter);
  const bands = form.bands.filter(
    ({ jurisdiction }) => jurisdiction === 'US' || states.includes(jurisdiction),
  );
  const fill = (item: Item): FilledItem => fillItem(item, matter, bands);
  const items = form.items.map((item) => fill({ ...item, id: String(item.number) }));
  const stateItems = form.states
    .filter(({ state }) => states.includes(state))
    .flatMap(({ state, source, basis, items: added }) =>
      added.map((item) => fill({ ...item, id: `${state}-${item.id}`, citation: source, basis })),
    );
  return { ...matter.head, items, stateItems, counts: countItems([...items, ...stateItems]) };
}

type Item = Omit<ReportItem, 'number'> & { readonly id: string };

/** Where it may have happened, and where the vessel has its number: either may be reported to (33 CFR 173.59). */
function statesConcerned({ record: { sections }, head }: ReportMatter): string[] {
  const craft = sections.craft?.craft?.find(({ id }) => id === head.craft);
  const number = valueOf(craft?.stateOfNumber);
  return [...(valueOf(sections['time-and-place']?.states) ?? []), ...(number === undefined ? [] : [number])];
}

function fillItem(
  { parts, operatorWrites, ...item }: Item,
  matter: ReportMatter,
  bands: readonly FormBands[],
): FilledItem {
  const theirs = matter.head.customerWrites && operatorWrites === true;
  const lines = theirs ? [THEIRS] : settle(item.id, linesOf(parts, matter, bands), matter);
  const { id, citation, words, basis } = item;
  return { id, citation, words, basis, state: worstOf(lines.map(({ state }) => state)), lines };
}

const THEIRS: ReportLine = {
  label: '',
  subject: null,
  state: 'unknown',
  text: 'Left to the operator, who writes it from what they know.',
  source: null,
  section: null,
  path: '',
};

/** Line by line for each subject, so that what belongs to one person or craft stands together. */
function linesOf(
  parts: readonly ReportPart[],
  matter: ReportMatter,
  bands: readonly FormBands[],
): ReportLine[] {
  const telling = { timeZone: matter.timeZone };
  const asked = parts.map((part) => ({ part, ...chooseSubjects(part, matter) }));
  const lines = asked.flatMap(({ part, subjects }) =>
    subjects.map((subject) => ({
      key: `${subject.section} ${subject.path}`,
      lines: [
        ...fillLine(part, subject, telling),
        ...(part.band === undefined
          ? []
          : fillBands(part.band, matter.record.sections.conditions ?? {}, bands)),
      ],
    })),
  );
  const keys = [...new Set(lines.map(({ key }) => key))];
  const needed = asked.filter(({ part }) => part.optional !== true);
  const remarks = needed.flatMap((one) =>
    one.remarks.map((remark): ReportLine => ({
      label: one.part.label,
      subject: remark.name,
      state: remark.state,
      text: remark.text,
      source: null,
      section: remark.section,
      path: remark.path,
    })),
  );
  return [
    ...keys.flatMap((key) => lines.filter((one) => one.key === key).flatMap((one) => one.lines)),
    ...remarks.filter(
      ({ subject, text }, index) =>
        remarks.findIndex((other) => other.subject === subject && other.text === text) === index,
    ),
  ];
}

/** What somebody looked into and could not learn is not missing. */
function settle(id: string, lines: ReportLine[], { notes: { notKnown = [] } }: ReportMatter): ReportLine[] {
  const note = notKnown.find((one) => one.id === id);
  if (note === undefined) return lines;
  return lines.map((line) =>
    line.state === 'missing'
      ? { ...line, state: 'unknown', text: `Not known: ${note.why}`, source: `looked into by ${note.by}` }
      : line,
  );
}
