import type { RecordSections, SectionName } from './incident-record.js';

/** The few words by which an incident is known in a list; the current view of what its sections say. */
export interface IncidentSummary {
  said?: string;
  kind?: string;
  /** How a craft that was not back turned out. */
  ended?: string;
  craft?: string[];
  occurredAt?: string;
  where?: string;
  people?: number;
  outcomes?: string[];
  /** Degrees, WGS 84. */
  position?: { latitude: number; longitude: number };
  /** Slugs, first event first. */
  casualtyTypes?: string[];
}

const LONGEST = 160;

/**
 * The part of the summary that one section gives; it replaces what that section gave before.
 * @example summarizeSection('call', { said: 'help', craftNamed: ['PWC 7'] }) // { said: 'help', craft: ['PWC 7'] }
 */
export function summarizeSection<N extends SectionName>(
  name: N,
  section: RecordSections[N],
): IncidentSummary {
  const summarize = SUMMARIES[name] as ((section: RecordSections[N]) => Summary) | undefined;
  const entries = Object.entries(summarize?.(section) ?? {});
  return Object.fromEntries(entries.filter(([, value]) => value !== undefined));
}

/** The summary of all sections together: what the sections on craft and time say goes before what the caller said. */
export function joinSummaries(parts: Partial<Record<SectionName, IncidentSummary>>): IncidentSummary {
  return {
    ...parts.call,
    ...parts['time-and-place'],
    ...parts.account,
    ...parts.craft,
    ...parts.people,
  };
}

/** Sections that the summary rests on. */
export const SUMMARIZED: readonly SectionName[] = ['call', 'time-and-place', 'account', 'craft', 'people'];

type Summary = { [M in keyof IncidentSummary]: IncidentSummary[M] | undefined };

const SUMMARIES: { [N in SectionName]?: (section: RecordSections[N]) => Summary } = {
  call: ({ said, kind, craftNamed, happenedWhere, overdue }) => ({
    said: cut(said),
    kind,
    ended: overdue?.ended?.value,
    craft: craftNamed,
    where: cut(happenedWhere?.value),
  }),
  'time-and-place': ({ occurred, description, waterBody, position }) => ({
    occurredAt: occurred?.value.at,
    where: cut(description?.value ?? waterBody?.value),
    position: position && { latitude: position.value.latitude, longitude: position.value.longitude },
  }),
  account: ({ casualtyTypes }) => ({ casualtyTypes: casualtyTypes?.value }),
  craft: ({ craft = [] }) => {
    const names = craft.map(({ name, id }) => name ?? id);
    return { craft: names.length > 0 ? names : undefined };
  },
  people: ({ people = [] }) => ({
    people: people.length,
    outcomes: [...new Set(people.map(({ outcome }) => outcome?.value ?? 'unknown'))].sort(),
  }),
};

function cut(text: string | undefined): string | undefined {
  if (text === undefined || text.length <= LONGEST) return text;
  return `${[...text].slice(0, LONGEST - 1).join('')}…`;
}
