import { Link } from 'wouter-preact';
import { tellDay } from '../lists/tell-day.js';
import { Fold } from '../look/fold.js';
import { Empty, Note } from '../look/notes.js';
import { DefinitionRows } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { handOver as say } from '../words/hand-over.js';
import { ClaimForm } from './claim-form.js';
import type { NoticesAnswer, NoticeView, PolicyView } from './hand-over-answers.js';
import { NoticeForm } from './notice-form.js';

interface NoticesSectionProps {
  readonly id: string;
  readonly answer: NoticesAnswer;
  readonly makes: boolean;
}

/** One page for each policy that held, what was made, and what the insurer answered. */
export function NoticesSection({ id, answer, makes }: NoticesSectionProps) {
  const { policies, uncovered, notices } = answer;
  return (
    <>
      <p class="quiet">{say.noticesLead}</p>
      {uncovered.length > 0 && <Note>{say.uncovered(uncovered.join(', '))}</Note>}
      {policies.length === 0 && (
        <Empty>
          <p>{say.noPolicies}</p>
          {makes && (
            <p class="links-line">
              <Link href="/policies">{say.policies}</Link>
            </p>
          )}
        </Empty>
      )}
      {policies.map((policy) => (
        <Policy
          key={policy.id}
          id={id}
          policy={policy}
          makes={makes}
          notices={notices.filter((notice) => notice.policy === policy.id)}
        />
      ))}
    </>
  );
}

interface PolicyProps {
  readonly id: string;
  readonly policy: PolicyView;
  readonly makes: boolean;
  readonly notices: readonly NoticeView[];
}

function Policy({ id, policy, makes, notices }: PolicyProps) {
  const { number, insurer, craft, firstDay, lastDay, noticeTerms, noticeMail, noticePhone, claim } = policy;
  const title = say.policyOf(number, insurer);
  const claimed = [claim?.number, claim?.adjuster, claim?.phone, claim?.mail].filter(Boolean).join(', ');
  return (
    <article class="packet" aria-label={title}>
      <h3>{title}</h3>
      <DefinitionRows
        rows={[
          { term: say.policyTerms.craft, value: craft.join(', ') },
          { term: say.policyTerms.period, value: `${tellDay(firstDay)} – ${tellDay(lastDay)}` },
          { term: say.policyTerms.asks, value: noticeTerms ?? say.notEntered },
          {
            term: say.policyTerms.to,
            value: [noticeMail, noticePhone].filter(Boolean).join(', ') || say.notEntered,
          },
          { term: say.policyTerms.claim, value: claimed || say.noClaim },
        ]}
      />
      {notices.map((notice) => (
        <p class="links-line" key={notice.id}>
          <span class="made-line">{say.noticeLine(tellInstant(notice.madeAt), notice.by.person)}</span>
          <a
            href={`/api/incidents/${id}/first-notices/${notice.id}/paper`}
            download
            aria-label={say.noticePaperOf(notice.policyNumber, tellInstant(notice.madeAt))}
          >
            {say.noticePaper}
          </a>
        </p>
      ))}
      {makes && <Fold title={say.makeNotice}>{() => <NoticeForm id={id} policy={policy.id} />}</Fold>}
      {makes && <Fold title={say.enterClaim}>{() => <ClaimForm id={id} policy={policy} />}</Fold>}
    </article>
  );
}
