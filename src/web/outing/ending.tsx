import { useState } from 'preact/hooks';
import type { NotBackEnd } from '../../../shared/outing/not-back.js';
import { useTell } from '../ask/use-tell.js';
import { ErrorState, Note, UndoStrip } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellClock } from '../look/tell-instant.js';
import { notBack as inLog } from '../words/en/not-back.js';
import { notBack as say } from '../words/not-back.js';
import { EndingForm } from './ending-form.js';
import type { NotBackView } from './not-back-answers.js';
import { notBackPath } from './not-back-queue.js';
import { ProposedIncident } from './proposed-incident.js';

/** How it ended, the way back from that, and what an ending may call for. */
export function Ending({ view }: { view: NotBackView | undefined }) {
  if (view === undefined) {
    return (
      <Section title={say.ending.title}>
        <p>{say.ending.device}</p>
      </Section>
    );
  }
  return (
    <Section title={say.ending.title}>
      {view.ended === null ? <EndingForm view={view} /> : <Ended view={view} />}
    </Section>
  );
}

function Ended({ view }: { view: NotBackView }) {
  const { id, ended, endedAt, endedBy, endedHow, timeZone, incidentId, notIncident, notIncidentBy } = view;
  const [key] = useState(() => crypto.randomUUID());
  const { tell, error } = useTell();
  const path = notBackPath(id);
  const undo = (): void => {
    const body = { why: inLog.ending.undoWhy };
    void tell(`${path}/ending/undoing`, { method: 'POST', body, key }, [path, '/api/outings']);
  };
  const kind = say.ending.kinds[ended as NotBackEnd] ?? say.ending.becameIncident;
  const words = say.ending.ended(
    endedHow === null ? kind : `${kind}. ${endedHow}`,
    endedAt === null ? '' : tellClock(endedAt, timeZone),
    endedBy ?? '',
  );
  return (
    <>
      {incidentId === null ? <UndoStrip undo={undo}>{words}</UndoStrip> : <Note kind="saved">{words}</Note>}
      {error !== null && <ErrorState error={error} />}
      {notIncident !== null && <p>{say.proposes.saidNone(notIncidentBy ?? '', notIncident)}</p>}
      {view.proposesIncident !== null && <ProposedIncident view={view} why={view.proposesIncident} />}
    </>
  );
}
