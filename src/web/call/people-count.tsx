import { Choice } from '../look/choice.js';
import { call as say } from '../words/call.js';
import { call as inRecord } from '../words/en/call.js';
import { callInRecord } from '../words/en/call-in-record.js';
import type { CallHands } from './use-call.js';

const COUNTS = [1, 2, 3, 4, 5] as const;
/** Six and more are counted in the record; here it says that they are many. */
const MANY = 6;

/** How many are on it: a tap, and may be left. */
export function PeopleCount({ hands: { draft, answer } }: { hands: CallHands }) {
  const value = draft?.answers.people?.value;
  const choose = (chosen: string): void => {
    const count = Number(chosen);
    const words = count === MANY ? inRecord.people.more : inRecord.people.count(count);
    answer('people', count, callInRecord.people(words));
  };
  const options = [
    ...COUNTS.map((count) => ({ value: String(count), label: String(count) })),
    { value: String(MANY), label: say.people.more },
  ];
  return (
    <div class="counts">
      <Choice
        legend={say.people.how}
        options={options}
        value={value === undefined ? undefined : String(value)}
        onChoose={choose}
      />
    </div>
  );
}
