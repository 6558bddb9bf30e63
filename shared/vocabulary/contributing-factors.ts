import { type ListedWord, listWords } from './listed-terms.js';

const STATISTICS =
  'Coast Guard Recreational Boating Statistics 2023, table of primary contributing factors, as a law page reproduces it';

/** What contributed: facts and no blame. The thirty words of the statistics of 2023, in their five groups. */
export const contributingFactors: readonly ListedWord[] = [
  ...listWords(
    STATISTICS,
    'read-secondary',
    [
      'Alcohol use',
      'Drug use',
      'Excessive speed',
      'Failure to vent',
      'Improper lookout',
      'Inadequate onboard navigation lights',
      'Navigation rules violation',
      'Operator inattention',
      'Operator inexperience',
      'Restricted vision',
      'Sharp turn',
      'Starting in gear',
    ],
    'Operation of vessel',
  ),
  ...listWords(
    STATISTICS,
    'read-secondary',
    ['Improper anchoring', 'Improper loading', 'Overloading', 'People on gunwale, bow or transom'],
    'Loading',
  ),
  ...listWords(
    STATISTICS,
    'read-secondary',
    ['Equipment failure', 'Hull failure', 'Machinery failure'],
    'Failure of boat or equipment',
  ),
  ...listWords(
    STATISTICS,
    'read-secondary',
    [
      'Congested waters',
      'Dam/lock',
      'Force of wave/wake',
      'Hazardous waters',
      'Missing or inadequate navigation aid',
      'Weather',
    ],
    'Environment',
  ),
  ...listWords(
    STATISTICS,
    'read-secondary',
    ['Carbon monoxide exposure', 'Ignition of fuel or vapor', 'Sudden medical condition', 'Other', 'Unknown'],
    'Miscellaneous',
  ),
];
