import { Link } from 'wouter-preact';
import { useManages } from '../lists/use-manages.js';
import { Sign } from '../look/sign.js';
import { fleet as say } from '../words/fleet.js';
import type { Craft, ShownHold } from './craft-answers.js';
import { StepForm } from './step-form.js';
import { stepSpecs } from './step-specs.js';
import { type NamedPhotograph, usePhotographs } from './use-photographs.js';

/** One reason to keep a craft in: what came of the incident, what its release takes, and what still stands against it. */
export function HoldView({ craft, hold }: { craft: Craft; hold: ShownHold }) {
  const { incident, reason, gravity, needs, against, clearances } = hold;
  const photographs = usePhotographs(incident);
  const manages = useManages();
  const of = incident === null ? {} : { incident };
  return (
    <article class="hold" aria-label={reason}>
      <h3>
        {incident === null ? say.service.upkeep : say.service.incident}: {reason}
      </h3>
      {gravity !== null && <p>{say.service.gravity[gravity]}.</p>}
      {incident !== null && (
        <p class="links-line unprinted">
          <Link href={`/incidents/${incident}`}>{say.service.openIncident}</Link>
        </p>
      )}
      <p>{say.service.takes}:</p>
      <ul class="needs">
        <Need
          met={!against.some(({ code }) => code === 'STANDING_TOO_LOW')}
          words={say.service.who[needs.by]}
        />
        {needs.photographs && <Need met={hold.photographs.length > 0} words={say.service.photographs} />}
        {needs.clearance && <Need met={clearances.length > 0} words={say.service.clearance} />}
      </ul>
      <p class="quiet">{say.service.because(needs.because)}</p>
      <p class="quiet">{named(hold, photographs)}</p>
      {clearances.map(({ by, person, how }) => (
        <p key={`${by} ${person}`}>{say.service.cleared(say.step[by], person, how)}</p>
      ))}
      {against.length === 0 ? (
        <p>
          <strong>{say.service.mayGo}</strong>
        </p>
      ) : (
        <>
          <p>{say.service.against}:</p>
          <ul class="faults">
            {against.map(({ code, detail }) => (
              <li key={code}>{detail}</li>
            ))}
          </ul>
        </>
      )}
      <div class="unprinted">
        <StepForm craft={craft} kind="photographed" of={of} specs={stepSpecs.photographed(photographs)} />
        {incident !== null && manages && (
          <StepForm craft={craft} kind="cleared" of={of} specs={stepSpecs.cleared} />
        )}
        <StepForm
          craft={craft}
          kind="released"
          of={of}
          specs={stepSpecs.released(photographs)}
          confirm={{
            title: say.step.releaseTitle(craft.unitName),
            text: say.step.releaseText,
            yes: say.steps.released,
          }}
        />
      </div>
    </article>
  );
}

function Need({ met, words }: { met: boolean; words: string }) {
  return (
    <li>
      <Sign of={met ? 'yes' : 'no'} />
      {words}
    </li>
  );
}

function named({ photographs }: ShownHold, known: readonly NamedPhotograph[]): string {
  if (photographs.length === 0) return say.service.noneNamed;
  const names = photographs.map((one) => known.find(({ value }) => value === one)?.label ?? one);
  return say.service.named(names.join(', '));
}
