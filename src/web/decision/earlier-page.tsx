import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import { DeterminationView } from '../determination/determination-view.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';
import { ChangeList } from './change-list.js';
import { compareDeterminations } from './compare-determinations.js';
import type { DeterminationAnswer } from './service-answers.js';

/** A determination as it was made, and what changed since. */
export default function EarlierPage({ params: { id = '', sequence = '' } }: PageProps) {
  const path = `/api/incidents/${id}`;
  const then = useAsk<DeterminationAnswer>(`${path}/determinations/${sequence}`);
  const now = useAsk<DeterminationAnswer>(`${path}/determination`);
  const title = say.earlier.title(Number(sequence));
  const back = (
    <p class="links-line unprinted">
      <Link href={`/incidents/${id}/duties`}>{say.earlier.back}</Link>
    </p>
  );
  if (then.data === undefined) {
    return (
      <Page title={title}>
        {then.error === null ? <Loading /> : <ErrorState error={then.error} again={then.again} />}
        {back}
      </Page>
    );
  }
  const { madeAt, determination } = then.data;
  const changed = now.data === undefined ? null : compareDeterminations(then.data, now.data);
  return (
    <Page title={title} lead={say.earlier.lead(tellInstant(madeAt, determination.timeZone))}>
      <PrintedBy timeZone={determination.timeZone} />
      {back}
      {changed !== null && (
        <Section title={say.earlier.since}>
          {changed.length === 0 ? <p>{say.earlier.same}</p> : <ChangeList changed={changed} />}
        </Section>
      )}
      <DeterminationView determination={determination} now={Date.parse(madeAt)} />
    </Page>
  );
}
