import type { HouseRule } from '../../../../shared/follow-up/house-rule.js';

type Unit = NonNullable<HouseRule['unit']>;

/** The page of the written rules of the house, for managers. */
export const houseRules = {
  title: 'House rules',
  lead: 'Written rules of this business. None comes from a law, and none holds before the owner adopted it in writing. After an incident, managers see what the record shows beside the rules of that day.',
  inForce: 'In force today',
  none: 'No rules are in force. Nothing is compared with an incident until the owner adopts some.',
  ended: (document: string) => `No rules are in force: ${document} took them out.`,
  from: (document: string, day: string) => `${document}, from ${day}.`,
  coming: 'Adopted for a later day',
  by: (person: string, time: string) => `Written down by ${person}, ${time}`,
  count: (count: number) => (count === 1 ? '1 rule' : `${count} rules`),
  takenOut: 'Took the rules out of force.',
  all: 'Everything that was adopted',
  allLead: 'Nothing is overwritten. Of two for the same day, the one that was written down later counts.',
  standing: {
    'in-force': 'In force',
    coming: 'Not yet in force',
    past: 'No longer in force',
    corrected: 'Corrected by a later entry for the same day',
  },
  owner: 'The owner adopts rules: an administrator writes them down here.',
  adopt: 'Adopt rules, or change them',
  end: 'Take the rules out of force',
  correct: (document: string) => `Correct this entry: ${document}`,
  form: {
    lead: 'Everything that is ticked holds from that day on, in place of all rules before.',
    endLead: 'From that day on nothing is compared. What was in force before stays with its days.',
    correctLead: 'A correction is a new entry for the same day. The one before stays readable.',
    day: 'From which day',
    document: 'Written document that says so',
    documentHint: 'Its name and edition, so that somebody finds it years later.',
    rules: 'Rules in that document',
    figures: 'The figures that stand here first are common practice, without a source: write your own.',
    figure: (rule: string) => `Figure of: ${rule}`,
    nothing: 'Tick at least one rule, or take the rules out of force instead.',
    look: 'Look at the fields that are marked above.',
    adopt: 'Adopt what is ticked',
    end: 'Take them out of force',
    correct: 'Save the correction',
  },
  units: { ft: 'ft', years: 'years' } satisfies Record<Unit, string>,
  said: 'Written down.',
};
