import type { IncidentFacts, Person, Vessel } from '../../shared/record/incident-facts.js';

/** An unknown of the facts: its pointer, and every way of answering it, each on a copy. */
export interface Unknown {
  readonly fact: string;
  readonly answers: readonly ((facts: IncidentFacts) => void)[];
}

const GREAT_DAMAGE = 1_000_000;

/**
 * Every unknown that a determination may turn on, with answers that reach every side of it. A new person or
 * a new damage stands for "not everything is listed yet". Found from the facts alone, so that questions can
 * be held against it.
 */
export function findUnknowns(facts: IncidentFacts): Unknown[] {
  return [
    ...wholeUnknowns(facts),
    ...facts.vessels.flatMap(vesselUnknowns),
    ...facts.people.flatMap((person, at) => personUnknowns(person, at, facts)),
    ...facts.damage.flatMap(({ amount }, at): Unknown[] => {
      const range = amount === 'unknown' ? [0, GREAT_DAMAGE] : [];
      const ends = typeof amount === 'object' && amount.low < amount.high ? [amount.low, amount.high] : [];
      const values = [...range, ...ends];
      return values.length === 0
        ? []
        : [
            {
              fact: `/damage/${at}/amount`,
              answers: values.map((value) => (one) => set(one.damage[at], { amount: value })),
            },
          ];
    }),
  ];
}

function wholeUnknowns(facts: IncidentFacts): Unknown[] {
  const unknowns: Unknown[] = [];
  const yesNo = (
    fact: 'federalWaters' | 'involvesVesselOrEquipment' | 'officerAtScene' | 'operatorAbleToReport',
  ) =>
    unknowns.push({ fact: `/${fact}`, answers: [(one) => (one[fact] = 'yes'), (one) => (one[fact] = 'no')] });
  if (facts.federalWaters === 'unknown') yesNo('federalWaters');
  if (facts.involvesVesselOrEquipment === 'unknown') yesNo('involvesVesselOrEquipment');
  if ((facts.officerAtScene ?? 'unknown') === 'unknown') yesNo('officerAtScene');
  if ((facts.operatorAbleToReport ?? 'unknown') === 'unknown') yesNo('operatorAbleToReport');
  if (facts.vessels.length === 0) {
    const vessel = (different: Partial<Vessel>) => (one: IncidentFacts) =>
      one.vessels.push({
        ...{ id: 'new', use: 'rental', numbered: 'yes', inspected: 'no', documented: 'no', motorized: 'yes' },
        ...{ stateOfNumber: 'TX', completeLoss: 'no', ...different },
      });
    unknowns.push({
      fact: '/vessels',
      answers: [
        vessel({}),
        vessel({ completeLoss: 'yes' }),
        vessel({ use: 'passenger-for-hire' }),
        vessel({ inspected: 'yes', documented: 'yes', motorized: 'no' }),
      ],
    });
  }
  if ((facts.everyoneAccountedFor ?? 'unknown') === 'unknown') {
    unknowns.push({
      fact: '/everyoneAccountedFor',
      answers: [
        (one) => (one.everyoneAccountedFor = 'yes'),
        ...concernedPeople(facts).map((person) => (one: IncidentFacts) => {
          one.everyoneAccountedFor = 'yes';
          one.people.push({ ...person, id: `accounted-${one.people.length}` });
        }),
      ],
    });
  }
  if (facts.peopleAssessment !== 'complete') {
    unknowns.push({
      fact: '/peopleAssessment',
      answers: [
        (one) => (one.peopleAssessment = 'complete'),
        ...concernedPeople(facts).map((person) => (one: IncidentFacts) => {
          one.peopleAssessment = 'complete';
          one.people.push({ ...person, id: `assessed-${one.people.length}` });
        }),
      ],
    });
  }
  const nobodyMissing = facts.people.every(({ outcome }) => outcome !== 'missing');
  const short = facts.vessels.some(
    ({ id, aboard }) =>
      aboard !== undefined && facts.people.filter(({ vessel }) => vessel === id).length < aboard,
  );
  if ((facts.everyoneAccountedFor === 'no' && nobodyMissing) || short) {
    const list = (person: Person) => (one: IncidentFacts) => {
      one.everyoneAccountedFor =
        facts.everyoneAccountedFor === 'no' ? 'yes' : (facts.everyoneAccountedFor ?? 'unknown');
      for (const vessel of one.vessels) {
        const listed = one.people.filter((other) => other.vessel === vessel.id).length;
        for (let at = listed; at < (vessel.aboard ?? 0); at += 1) {
          one.people.push({ id: `${vessel.id}-${at}`, vessel: vessel.id, outcome: 'unhurt' });
        }
      }
      one.people.push({ ...person, id: `listed-${one.people.length}` });
    };
    unknowns.push({
      fact: '/people',
      answers: [{ id: '', outcome: 'unhurt' } as Person, ...concernedPeople(facts)].map(list),
    });
  }
  if (facts.damageAssessment !== 'complete') {
    unknowns.push({
      fact: '/damageAssessment',
      answers: [
        (one) => (one.damageAssessment = 'complete'),
        (one) => {
          one.damageAssessment = 'complete';
          one.damage.push({ id: 'more', of: 'other-property', owner: 'somebody', amount: GREAT_DAMAGE });
        },
      ],
    });
  }
  if (facts.casualtyTypes.every((type) => type === 'unknown')) {
    unknowns.push({ fact: '/casualtyTypes', answers: [(one) => (one.casualtyTypes = ['grounding'])] });
  }
  return unknowns;
}

function vesselUnknowns(vessel: Vessel, at: number): Unknown[] {
  const members = ['numbered', 'completeLoss', 'motorized', 'documented', 'inspected'] as const;
  return members
    .filter((member) => (vessel[member] ?? 'unknown') === 'unknown')
    .map((member) => ({
      fact: `/vessels/${at}/${member}`,
      answers: (['yes', 'no'] as const).map((value) => (one) => set(one.vessels[at], { [member]: value })),
    }));
}

function personUnknowns(person: Person, at: number, facts: IncidentFacts): Unknown[] {
  const unknowns: Unknown[] = [];
  const answer = (member: string, values: readonly Partial<Person>[]) =>
    unknowns.push({
      fact: `/people/${at}/${member}`,
      answers: values.map((value) => (one: IncidentFacts) => set(one.people[at], value)),
    });
  if (['missing', 'not-back', 'unknown'].includes(person.outcome)) {
    // A craft not back without signs of harm is no disappearance while that stands.
    const harmless = person.outcome === 'not-back' && person.signsOfHarm === 'no';
    const found = concernedPeople(facts).filter(({ outcome }) => !(harmless && outcome === 'missing'));
    answer('outcome', [{ outcome: 'unhurt' }, ...found.map((one) => ({ ...one, id: person.id }))]);
    if (person.outcome === 'not-back' && (person.signsOfHarm ?? 'unknown') === 'unknown') {
      answer('signsOfHarm', [{ signsOfHarm: 'yes' }, { signsOfHarm: 'no' }]);
    }
    return unknowns;
  }
  if (person.outcome === 'unhurt') return unknowns;
  if ((person.care ?? 'unknown') === 'unknown') {
    answer('care', [{ care: 'none' }, { care: 'first-aid' }, { care: 'beyond-first-aid' }]);
  }
  if (person.outcome === 'died' && person.diedAt === undefined) {
    answer('diedAt', [{ diedAt: facts.occurredAt }, { diedAt: later(facts, 25) }]);
  }
  for (const member of [
    'lostConsciousness',
    'carriedFromScene',
    'inpatient',
    'amputation',
    'eyeLoss',
  ] as const) {
    if ((person[member] ?? 'unknown') === 'unknown')
      answer(member, [{ [member]: 'yes' }, { [member]: 'no' }]);
  }
  if (typeof person.incapacitatedHours !== 'number') {
    answer(
      'incapacitatedHours',
      [0, 1, 24, 25, 80].map((hours) => ({ incapacitatedHours: hours })),
    );
  }
  return unknowns;
}

/** People of whom each kind of trigger is true. */
function concernedPeople(facts: IncidentFacts): Person[] {
  const well = {
    lostConsciousness: 'no',
    carriedFromScene: 'no',
    incapacitatedHours: 0,
    care: 'none',
  } as const;
  const signs = { inpatient: 'no', amputation: 'no', eyeLoss: 'no' } as const;
  return [
    { id: '', outcome: 'died', diedAt: later(facts, 0), ...well, ...signs },
    { id: '', outcome: 'died', diedAt: later(facts, 1), ...well, ...signs },
    { id: '', outcome: 'died', diedAt: later(facts, 30), ...well, ...signs },
    { id: '', outcome: 'died', diedAt: later(facts, 30), ...well, ...signs, care: 'beyond-first-aid' },
    { id: '', outcome: 'injured', ...well, ...signs },
    { id: '', outcome: 'injured', ...well, ...signs, care: 'first-aid' },
    {
      ...{ id: '', outcome: 'injured', ...well, ...signs, care: 'beyond-first-aid', inpatient: 'yes' },
      ...{ lostConsciousness: 'yes', carriedFromScene: 'yes', incapacitatedHours: 80 },
    },
    { id: '', outcome: 'missing' },
  ];
}

function later(facts: IncidentFacts, hours: number): string {
  return new Date(Date.parse(facts.occurredAt) + hours * 3_600_000).toISOString();
}

function set<T extends object>(target: T | undefined, members: Partial<T>): void {
  if (target === undefined) throw new Error('an answer without its place');
  Object.assign(target, members);
}

/** A completion: the facts with every unknown answered, and which answer each unknown got. */
export interface Completion {
  readonly facts: IncidentFacts;
  readonly answers: ReadonlyMap<string, number>;
}

/**
 * Every completion, or null when there are more than `most`. Each unknown is answered once.
 * @param find which unknowns are answered, and how
 */
export function completeFacts(
  facts: IncidentFacts,
  most: number,
  find: (facts: IncidentFacts) => readonly Unknown[] = findUnknowns,
): Completion[] | null {
  const done: Completion[] = [];
  const open: Completion[] = [{ facts, answers: new Map() }];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { facts: current, answers } = next;
    const unknown = find(current).find(({ fact }) => !answers.has(fact));
    if (unknown === undefined) {
      done.push(next);
    } else {
      unknown.answers.forEach((answer, index) => {
        const copy = structuredClone(current);
        answer(copy);
        open.push({ facts: copy, answers: new Map([...answers, [unknown.fact, index]]) });
      });
    }
    if (done.length + open.length > most) return null;
  }
  return done;
}
