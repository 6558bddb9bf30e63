import { Link } from 'wouter-preact';
import { Button } from '../look/button.js';
import { tellClock } from '../look/tell-instant.js';
import { outAndBack as say } from '../words/out-and-back.js';
import type { ShownCraft } from './lay-over.js';
import { TimeOut } from './time-out.js';

interface CraftRowProps {
  readonly craft: ShownCraft;
  readonly onBack: () => void;
  readonly onNotBack: () => void;
  readonly onChange: () => void;
}

/** A craft: how long it may still be out as the figure, whom to call, and one press when it is back. */
export function CraftRow({ craft, onBack, onNotBack, onChange }: CraftRowProps) {
  const { unitName, standing, outing, notBack, onlyHere, dueBackAt } = craft;
  const isOut = standing !== 'in' && standing !== 'not-known';
  const mayBeBack = isOut && (outing !== null || onlyHere);
  return (
    <li class={`craft-row ${standing}`}>
      <div class="craft-what">
        <h3>
          {unitName} <small>{craft.colours.join(', ')}</small>
        </h3>
        {isOut && <TimeOut dueBackAt={dueBackAt} />}
        <About craft={craft} isOut={isOut} />
        {onlyHere && <p class="only-here">{say.onlyHere}</p>}
      </div>
      {mayBeBack && (
        <Button look="main" label={say.backOf(unitName)} onPress={onBack}>
          {say.back}
        </Button>
      )}
      {isOut && (
        <div class="links-line craft-links">
          {outing?.details?.phone !== undefined && (
            <a href={`tel:${outing.details.phone}`}>{say.callRenter(outing.details.phone)}</a>
          )}
          {notBack === null && standing !== 'out' && (
            <Button label={say.notBackOf(unitName)} onPress={onNotBack}>
              {say.notBack}
            </Button>
          )}
          {outing?.details !== undefined && (
            <Button look="plain" label={say.changeOf(unitName)} onPress={onChange}>
              {say.change}
            </Button>
          )}
        </div>
      )}
      {notBack !== null && (
        <div class="links-line craft-links">
          <Link
            class="looked-for"
            href={`/out-and-back/not-back/${notBack}`}
            aria-label={say.lookedForOf(unitName)}
          >
            {say.lookedFor}
          </Link>
        </div>
      )}
    </li>
  );
}

function About({ craft, isOut }: { craft: ShownCraft; isOut: boolean }) {
  const { outing, lastIn, counted, inService, standing } = craft;
  const { renter, aboard } = outing?.details ?? {};
  const parts = isOut
    ? [
        renter,
        aboard !== undefined && say.aboard(aboard),
        outing?.outAt && say.wentOut(tellClock(outing.outAt)),
      ]
    : [
        standing === 'in' && lastIn !== null && say.cameIn(tellClock(lastIn)),
        counted?.answer === 'elsewhere' && say.elsewhere(counted.where ?? ''),
        !inService && say.outOfService,
      ];
  const said = parts.filter(Boolean).join(' · ');
  return said === '' ? null : <p class="quiet">{said}</p>;
}
