import type { ComponentChildren } from 'preact';
import { useAsk } from '../ask/use-ask.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { evidence as say } from '../words/evidence.js';
import { WaitingLines } from './added-note.js';
import { HandOverForm, ThingForm } from './custody-forms.js';
import type { CustodyAnswer, CustodyAnswerItem } from './evidence-answers.js';

/** Things kept as evidence, each with whose hands it went through and what is missing in that. */
export function CustodySection({ incident, timeZone }: { incident: string; timeZone: string | undefined }) {
  const { data, error, again } = useAsk<CustodyAnswer>(`/api/incidents/${incident}/custody`, { keep: true });
  const mayWrite = useSession().me?.role !== 'counsel';
  return (
    <Section title={say.custody.title}>
      <p class="quiet">{say.custody.lead}</p>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.items.length === 0 && (
        <Empty>
          <p>{say.custody.none}</p>
        </Empty>
      )}
      <ul class="things">
        {data?.items.map((item) => (
          <Thing key={item.id} item={item} timeZone={timeZone}>
            {mayWrite && (
              <Fold title={say.custody.handOver}>
                {() => <HandOverForm incident={incident} item={item} />}
              </Fold>
            )}
            <WaitingLines incident={incident} list={`custody/${item.id}/hand-overs`} member="to" />
          </Thing>
        ))}
      </ul>
      <WaitingLines incident={incident} list="custody" member="what" />
      {mayWrite && <Fold title={say.custody.add}>{() => <ThingForm incident={incident} />}</Fold>}
    </Section>
  );
}

interface ThingProps {
  readonly item: CustodyAnswerItem;
  readonly timeZone: string | undefined;
  readonly children?: ComponentChildren;
}

export function Thing({ item, timeZone, children }: ThingProps) {
  const { what, foundWhere, foundBy, keptWhere, seal, handOvers = [], gaps } = item;
  const facts = [
    [say.custody.foundWhere, foundWhere],
    [say.custody.foundBy, foundBy],
    [say.custody.keptWhere, keptWhere],
    [say.custody.seal, seal],
  ].filter(([, value]) => value !== undefined);
  return (
    <li>
      <strong>{what}</strong>
      <p class="quiet">{facts.map(([term, value]) => `${term ?? ''}: ${value ?? ''}`).join(' · ')}</p>
      {handOvers.length > 0 && (
        <ol class="hand-overs">
          {handOvers.map(({ id, from, to, at, why }) => (
            <li key={id}>
              {tellInstant(at, timeZone)}: {say.custody.handed(from, to)}. {why}
            </li>
          ))}
        </ol>
      )}
      {gaps.map((gap) => (
        <p key={gap}>
          <Sign of="unknown" />
          {gap}
        </p>
      ))}
      {children}
    </li>
  );
}
