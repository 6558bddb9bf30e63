import { useAsk } from '../ask/use-ask.js';
import { ErrorState, Loading, Note } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { fleet as say } from '../words/fleet.js';
import type { Craft, CraftService } from './craft-answers.js';
import { HoldView } from './hold-view.js';
import { StepForm } from './step-form.js';
import { stepSpecs } from './step-specs.js';

/** Whether it may go out; what keeps it in, what its release takes, and the steps that can be taken now. */
export function CraftServiceSection({ craft }: { craft: Craft }) {
  const { data, error, again } = useAsk<CraftService>(`/api/craft/${craft.id}/service`, { keep: true });
  if (data === undefined) return error === null ? <Loading /> : <ErrorState error={error} again={again} />;
  const { inService, holds, heldByAgency, doNotStart, custodyGaps } = data;
  const isOutForUpkeep = holds.some(({ incident }) => incident === null);
  return (
    <Section
      title={say.service.title}
      aside={
        <strong>
          <Sign of={inService ? 'yes' : 'no'} />
          {inService ? say.inService : say.out}
        </strong>
      }
    >
      {inService && <p>{say.service.nothing}</p>}
      {heldByAgency !== null && (
        <Note>
          <p>
            <strong>{say.service.heldBy(heldByAgency.agency)}</strong>
          </p>
          <Listed title={say.service.askAgency} items={custodyGaps} />
        </Note>
      )}
      {doNotStart.length > 0 && (
        <Note>
          <p>
            <strong>{say.service.doNotStart}</strong>: {doNotStart.join('; ')}
          </p>
        </Note>
      )}
      {holds.map((hold) => (
        <HoldView key={hold.incident ?? 'upkeep'} craft={craft} hold={hold} />
      ))}
      <div class="unprinted">
        {!isOutForUpkeep && <StepForm craft={craft} kind="taken-out" specs={stepSpecs['taken-out']} />}
        <StepForm craft={craft} kind="do-not-start" specs={stepSpecs['do-not-start']} />
        {doNotStart.length > 0 && (
          <StepForm craft={craft} kind="start-allowed" specs={stepSpecs['start-allowed']} />
        )}
        {heldByAgency === null ? (
          <StepForm craft={craft} kind="held-by-agency" specs={stepSpecs['held-by-agency']} />
        ) : (
          <StepForm craft={craft} kind="returned-by-agency" specs={stepSpecs['returned-by-agency']} />
        )}
      </div>
    </Section>
  );
}

function Listed({ title, items }: { title: string; items: readonly string[] }) {
  if (items.length === 0) return null;
  return (
    <>
      <p>{title}</p>
      <ul class="faults">
        {items.map((item) => (
          <li key={item}>{item}</li>
        ))}
      </ul>
    </>
  );
}
