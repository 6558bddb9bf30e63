import { valueOf } from '../call/known.js';
import type { Craft } from '../record/craft-section.js';
import type { SectionName } from '../record/incident-record.js';
import { chooseDamage, chooseOtherProperty } from './choose-damage.js';
import { chooseOnTheWater, choosePeople } from './choose-people.js';
import { chooseResponders, chooseWitnesses } from './choose-outsiders.js';
import { operatorsOf } from './find-operators.js';
import { nameOf } from './list-reports.js';
import type { AskedOf, ReportPart } from './report-form.js';
import type { Remark, ReportMatter, Subject, Subjects } from './report-matter.js';

/**
 * Whom or what a part of an item is asked of, in this record. A list that may not be whole says so, so that nobody takes
 * "two people hurt" for all of them.
 * @example chooseSubjects({ of: 'every-craft', … }, matterWithoutCraft).remarks[0]?.text // 'No craft is named.'
 */
export function chooseSubjects(
  { of, section }: Pick<ReportPart, 'of' | 'section'>,
  matter: ReportMatter,
): Subjects {
  return CHOOSERS[of](matter, section);
}

type Chooser = (matter: ReportMatter, section: SectionName | undefined) => Subjects;

const CHOOSERS: Readonly<Record<AskedOf, Chooser>> = {
  record: ({ record }, section) =>
    one({ section: section ?? null, value: (section && record.sections[section]) ?? {} }),
  'every-craft': (matter) => craftOf(matter, () => true),
  'this-craft': (matter) => craftOf(matter, ({ id }) => id === matter.head.craft),
  'every-operator': (matter) => operators(matter, () => true),
  'this-operator': (matter) => operators(matter, ({ id }) => id === matter.head.craft),
  'on-the-water': ({ record }) => chooseOnTheWater(record),
  hurt: ({ record }) => choosePeople(record, ['injured', 'died', 'missing'], 'Nobody was hurt.'),
  injured: ({ record }) => choosePeople(record, ['injured'], 'Nobody was injured.'),
  dead: ({ record }) => choosePeople(record, ['died'], 'Nobody died.'),
  damage: ({ record }) => chooseDamage(record),
  'other-property': ({ record }) => chooseOtherProperty(record),
  witnesses: ({ record }) => chooseWitnesses(record),
  responders: ({ record }) => chooseResponders(record),
  opinion: ({ notes: { opinion } }) =>
    opinion === undefined ? { subjects: [], remarks: [BLANK] } : one({ section: null, value: opinion }),
  submitter: (matter) =>
    matter.head.reporter === 'operator'
      ? CHOOSERS['this-operator'](matter, undefined)
      : one({ section: null, value: matter.notes.submitter ?? {} }),
  paper: () => one({ section: null, value: {} }),
};

const BLANK: Remark = {
  name: null,
  state: 'unknown',
  text: 'Left blank on purpose: an opinion is a manager’s to write, after counsel, or nobody’s.',
  section: null,
  path: '',
};

function one({ section, value }: Pick<Subject, 'section' | 'value'>): Subjects {
  return { subjects: [{ name: null, section, path: '', value }], remarks: [] };
}

function listed({ record }: ReportMatter, which: (craft: Craft) => boolean): readonly Craft[] {
  return (record.sections.craft?.craft ?? []).filter(which);
}

const NO_CRAFT: Remark = {
  name: null,
  state: 'missing',
  text: 'No craft is named.',
  section: 'craft',
  path: '',
};

function craftOf(matter: ReportMatter, which: (craft: Craft) => boolean): Subjects {
  const subjects = listed(matter, which).map((craft): Subject => {
    const fleet = matter.fleet[craft.id];
    return {
      name: nameOf(craft),
      section: 'craft',
      path: `/craft/${craft.id}`,
      value: craft,
      ...(fleet === undefined ? {} : { fleet }),
    };
  });
  return { subjects, remarks: subjects.length === 0 ? [NO_CRAFT] : [] };
}

function operators(matter: ReportMatter, which: (craft: Craft) => boolean): Subjects {
  const craft = listed(matter, which);
  const parts = craft.map((one): Subjects => {
    const drivers = operatorsOf(one.id, matter.record.sections);
    return drivers.length === 0
      ? { subjects: [], remarks: [noOperator(one)] }
      : {
          subjects: drivers.map((driver) => ({
            name: `${nameOf(one)}: ${driver.name ?? 'operator'}`,
            section: driver.section,
            path: driver.path,
            value: driver,
          })),
          remarks: [],
        };
  });
  return {
    subjects: parts.flatMap(({ subjects }) => subjects),
    remarks: craft.length === 0 ? [NO_CRAFT] : parts.flatMap(({ remarks }) => remarks),
  };
}

function noOperator(craft: Craft): Remark {
  const unmanned = valueOf(craft.aboard) === 0;
  return {
    name: nameOf(craft),
    state: unmanned ? 'answered' : 'missing',
    text: unmanned ? 'Nobody was aboard.' : 'Who operated it is not recorded.',
    section: unmanned ? 'craft' : 'people',
    path: unmanned ? `/craft/${craft.id}/aboard` : '',
  };
}
