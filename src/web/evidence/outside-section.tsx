import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { OUTSIDE_STATES, type OutsideState } from '../../../shared/record/evidence-section.js';
import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Deadline } from '../look/deadline.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Select } from '../look/select.js';
import { Sign } from '../look/sign.js';
import { nowByService } from '../look/use-now.js';
import { useSession } from '../session/session.js';
import { evidence as say } from '../words/evidence.js';
import { WaitingLines } from './added-note.js';
import type { OutsideAnswer, OutsideAnswerItem } from './evidence-answers.js';
import { OutsideForm } from './outside-form.js';

/** Evidence that others hold, the soonest overwritten first. */
export function OutsideSection({ incident, timeZone }: { incident: string; timeZone: string | undefined }) {
  const path = `/api/incidents/${incident}/outside-evidence`;
  const { data, error, again } = useAsk<OutsideAnswer>(path, { keep: true });
  const mayWrite = useSession().me?.role !== 'counsel';
  return (
    <Section title={say.outside.title}>
      <p class="quiet">{say.outside.lead}</p>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.items.length === 0 && (
        <Empty>
          <p>{say.outside.none}</p>
        </Empty>
      )}
      <ul class="things">
        {data?.items.map((item) => (
          <OutsideItem key={item.id} item={item} timeZone={timeZone}>
            {mayWrite && <Fold title={say.outside.state}>{() => <StateForm path={path} item={item} />}</Fold>}
          </OutsideItem>
        ))}
      </ul>
      <WaitingLines incident={incident} list="outside-evidence" member="what" />
      {mayWrite && (
        <Fold title={say.outside.add}>{() => <OutsideForm incident={incident} timeZone={timeZone} />}</Fold>
      )}
    </Section>
  );
}

interface OutsideItemProps {
  readonly item: OutsideAnswerItem;
  readonly timeZone: string | undefined;
  readonly children?: ComponentChildren;
}

export function OutsideItem({ item, timeZone, children }: OutsideItemProps) {
  const { kind, what, holder, howToReach, state, overwrittenAt, gaps } = item;
  const isOpen = state === 'not-asked' || state === 'asked' || state === 'promised';
  return (
    <li>
      <strong>{what ?? say.outside.kinds[kind]}</strong>
      <p class="quiet">
        {[say.outside.kinds[kind], holder, howToReach].filter((word) => word !== undefined).join(' · ')}
      </p>
      <p>{say.outside.states[state]}</p>
      {overwrittenAt !== undefined && isOpen && (
        <Deadline at={overwrittenAt} note={say.outside.gone} {...(timeZone !== undefined && { timeZone })} />
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

/** What came of it; whatever else is known of it stays. */
function StateForm({ path, item }: { path: string; item: OutsideAnswerItem }) {
  const me = useSession().me;
  const [state, setState] = useState<OutsideState>(item.state);
  const { tell, pending, error } = useTell();
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (pending) return;
    const { id, version, gaps, ...known } = item;
    void gaps;
    const isNowAsked = state === 'asked' && known.askedAt === undefined;
    const asked = {
      askedAt: new Date(nowByService()).toISOString(),
      ...(me !== null && { askedBy: me.name }),
    };
    const body = { ...known, state, ...(isNowAsked && asked) };
    await tell(`${path}/${id}`, { method: 'PUT', body, version }, [path]);
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Select
        label={say.outside.state}
        value={state}
        onChoose={(chosen) => setState(chosen === '' ? item.state : chosen)}
        none={say.outside.states[item.state]}
        groups={[{ options: OUTSIDE_STATES.map((value) => ({ value, label: say.outside.states[value] })) }]}
      />
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" busy={pending}>
        {say.outside.saveState}
      </Button>
    </form>
  );
}
