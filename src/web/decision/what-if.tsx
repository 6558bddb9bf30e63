import { useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Section } from '../look/section.js';
import { Select } from '../look/select.js';
import { decision as say } from '../words/decision.js';
import { FactControl } from './fact-control.js';
import { NO_DRAFT, readDraft } from './fact-draft.js';
import { listFacts, placeOf } from './fact-place.js';
import { nameFact, nameValue } from './fact-words.js';
import type { Matter } from './use-matter.js';
import type { WhatIf } from './use-what-if.js';
import { WhatWouldBe } from './what-would-be.js';

/** Tries values beside the record: any fact, and what would come of it. Nothing is saved, and that is said throughout. */
export function WhatIfSection({ matter, whatIf }: { matter: Matter; whatIf: WhatIf }) {
  const { facts, determination } = matter.determined;
  return (
    <Section title={say.whatIf.title}>
      <div class={whatIf.tries.length > 0 ? 'only-tried' : ''}>
        <p>{whatIf.tries.length > 0 ? <strong>{say.whatIf.mark}</strong> : say.whatIf.lead}</p>
        {whatIf.tries.length > 0 && (
          <>
            <ul class="tries" aria-label={say.whatIf.tries}>
              {whatIf.tries.map(({ pointer, value }) => (
                <li key={pointer}>
                  <span>
                    {nameFact(pointer, facts)}{' '}
                    <strong>
                      {nameValue(placeOf(pointer, facts)?.kind ?? 'text', value, determination.timeZone)}
                    </strong>
                  </span>
                  <Button
                    look="plain"
                    label={say.whatIf.drop(nameFact(pointer, facts))}
                    onPress={() => whatIf.drop(pointer)}
                  >
                    {say.whatIf.takeBack}
                  </Button>
                </li>
              ))}
            </ul>
            <WhatWouldBe matter={matter} tried={whatIf.tried} />
            <Button onPress={whatIf.clear}>{say.whatIf.clear}</Button>
          </>
        )}
      </div>
      <TryFact matter={matter} whatIf={whatIf} />
    </Section>
  );
}

function TryFact({ matter, whatIf }: { matter: Matter; whatIf: WhatIf }) {
  const { facts, determination } = matter.determined;
  const [pointer, setPointer] = useState('');
  const [draft, setDraft] = useState(NO_DRAFT);
  const [looked, setLooked] = useState(false);
  const place = pointer === '' ? null : placeOf(pointer, facts);
  const reading = place === null ? null : readDraft(place, draft, determination.timeZone);
  const submit = (event: Event): void => {
    event.preventDefault();
    setLooked(true);
    if (reading !== null && 'value' in reading) whatIf.add({ pointer, value: reading.value });
  };
  return (
    <form class="form unprinted" onSubmit={submit} noValidate>
      <Select
        label={say.whatIf.fact}
        none={say.filing.choose}
        value={pointer}
        onChoose={(chosen) => {
          setPointer(chosen);
          setDraft(NO_DRAFT);
          setLooked(false);
        }}
        groups={groupsOf(matter)}
      />
      {place !== null && (
        <>
          <FactControl
            place={place}
            label={say.whatIf.value}
            facts={facts}
            zone={determination.timeZone}
            draft={draft}
            onDraft={setDraft}
            error={looked && reading !== null && 'fault' in reading ? reading.fault : null}
          />
          <Button type="submit">{say.whatIf.try}</Button>
        </>
      )}
    </form>
  );
}

const GROUPS = ['people', 'damage', 'vessels', 'all'] as const;

function groupsOf({ determined: { facts } }: Matter) {
  const all = listFacts(facts);
  const groupOf = (pointer: string): (typeof GROUPS)[number] =>
    GROUPS.find((group) => pointer.startsWith(`/${group}/`)) ?? 'all';
  return GROUPS.map((group) => ({
    label: say.whatIf.groups[group],
    options: all
      .filter((pointer) => groupOf(pointer) === group)
      .map((pointer) => ({ value: pointer, label: nameFact(pointer, facts) })),
  })).filter(({ options }) => options.length > 0);
}
