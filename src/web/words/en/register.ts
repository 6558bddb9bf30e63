import { values } from '../../../../shared/record/field-words/en/values.js';
import { casualtyTypes } from '../../../../shared/vocabulary/casualty-types.js';

/** The register: the list of incidents, what it is narrowed by, its files and its map. */
export const register = {
  lead: (zone: string) => `Times are those of ${zone}.`,
  search: 'Search the records',
  searchHint: 'Words of the record or a reference, whole or their beginning.',
  searching: 'Searching…',
  count: (found: number, all: number) =>
    found === all
      ? `${all} ${all === 1 ? 'incident' : 'incidents'}`
      : `${found} of ${all} ${all === 1 ? 'incident' : 'incidents'}`,
  narrow: (set: readonly string[]) => ['Narrow the list', set.join(' · ')].filter(Boolean).join(': '),
  clear: 'Show all incidents',
  any: 'Any',
  filters: {
    status: 'Open or closed',
    reports: 'Reports',
    outcome: 'Some report is',
    hurt: 'Anyone hurt?',
    craft: 'Craft',
    station: 'Station',
    casualty: 'Kind of occurrence',
    from: 'Opened from',
    until: 'Opened until',
    order: 'Order',
  },
  statuses: { open: 'Open', closed: 'Closed' },
  standings: { open: 'Something is not settled', overdue: 'Overdue' },
  outcomes: { required: 'Required', undetermined: 'Cannot tell yet', 'not-required': 'Not required' },
  harms: { yes: 'Somebody was', no: 'Nobody, as far as everybody’s fate is known', unknown: 'Not known yet' },
  orders: { latest: 'Latest first', oldest: 'Oldest first', due: 'Earliest clock first' },
  columns: {
    reference: 'Reference',
    what: 'What',
    where: 'Where',
    when: 'When',
    clock: 'Earliest clock',
    duty: 'Reports',
    tasks: 'Tasks',
    status: 'Status',
  },
  kinds: values.callKind,
  fates: values.outcome,
  casualties: Object.fromEntries(casualtyTypes.map(({ slug, label }) => [slug, label])) as Record<
    string,
    string
  >,
  nothingSaid: 'Nothing is known yet',
  whereUnknown: 'Place not known yet',
  opened: (when: string) => `opened ${when}`,
  noClock: 'No clock runs',
  duty: {
    none: 'Not determined yet',
    filed: 'Filed',
    decided: 'Decided: no report',
    supplement: 'Supplement what was filed',
    overdue: 'overdue',
    open: (count: number) => `${count} not settled`,
  },
  tasks: (open: number, overdue: number) =>
    overdue > 0 ? `${open} open, ${overdue} overdue` : `${open} open`,
  empty: {
    none: 'There is no incident yet. One begins with a call for help.',
    call: 'Call for help',
    counsel: 'No incident was assigned to you.',
    filtered: 'No incident fits. Take something out of the search, or show all incidents.',
  },
  offlineSearch: 'Searching needs signal. Without it, this device shows the first page as it was last seen.',
  first: 'First page',
  previous: 'Page before',
  next: 'Next page',
  views: {
    title: 'Saved views',
    about: 'Kept on this device, sealed, for you alone.',
    name: 'Name of this view',
    save: 'Save what is shown as a view',
    nameMissing: 'Give it a name first.',
    none: 'No view is saved on this device yet. Narrow the list, then save it under a name.',
    take: 'Remove',
    remove: (name: string) => `Remove the view ${name}`,
    removed: (name: string) => `The view ${name} was removed.`,
    saved: (name: string) => `Saved as ${name}.`,
    notKept:
      'This browser keeps nothing, so no view can be saved. The address of the page holds the search: keep that.',
  },
  files: {
    title: 'As a file',
    about:
      'What the search finds, all pages of it. The file names people’s injuries: keep it as you keep the record.',
    workbook: 'Make a workbook (.xlsx)',
    table: 'Make a table (.csv)',
    of: 'Table of',
    subjects: { incidents: 'Incidents', duties: 'Reports', tasks: 'Tasks', filings: 'Filings' },
    progress: (done: number, total: number) => `${done} of ${total} read`,
    writing: 'The file is being written',
    ready: 'Ready: save it within the hour.',
    save: 'Save the file',
    another: 'Make another',
  },
  map: {
    show: 'Show the map',
    hide: 'Hide the map',
    title: 'Map of these incidents',
    without: (count: number) =>
      count === 1
        ? '1 incident of this page has no position.'
        : `${count} incidents of this page have no position.`,
    nowhere: 'No incident of this page has a position.',
    find: (reference: string) => `Show ${reference} on the map`,
    pin: (number: number, reference: string) => `${number}: ${reference}`,
    picked: 'On the map',
  },
};

export type RegisterWords = typeof register;
