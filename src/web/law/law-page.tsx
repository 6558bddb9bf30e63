import { Link } from 'wouter-preact';
import { useState } from 'preact/hooks';
import type { DuePack } from '../../../shared/law/list-due-packs.js';
import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { useAsk } from '../ask/use-ask.js';
import { Field } from '../look/field.js';
import { Empty, ErrorState, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintButton } from '../look/print-button.js';
import { PrintedBy } from '../look/printed-by.js';
import { Section } from '../look/section.js';
import { useSession } from '../session/session.js';
import { lawPages } from '../words/law-pages.js';
import { DueNow } from './due-now.js';
import { LawLine } from './law-line.js';
import './law.css';
import { useLaw } from './use-law.js';

const say = lawPages.list;

/** All law in use, a line each: what may be due, from which damage on, by when, how old and how sure the text is. */
export default function LawPage() {
  const { data: law, error, again } = useLaw();
  const { me } = useSession();
  const checks = useAsk<{ items: DuePack[] }>(me?.role === 'administrator' ? '/api/law/due' : null);
  const [asked, setAsked] = useState('');
  if (law === undefined) {
    return (
      <Page title={say.title} lead={say.lead}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const due = checks.data?.items;
  const found = law.packs.filter((pack) => isLike(pack, asked)).sort(federalFirst);
  const groups = [
    { title: say.accidents, packs: found.filter(({ subject }) => subject === undefined) },
    { title: say.others, packs: found.filter(({ subject }) => subject !== undefined) },
  ];
  return (
    <Page title={say.title} lead={say.lead} actions={<PrintButton />}>
      <PrintedBy />
      <p>{lawPages.notAdvice}</p>
      {law.kept && <Note kind="offline">{lawPages.kept}</Note>}
      {checks.error !== null && <ErrorState error={checks.error} again={checks.again} />}
      {due !== undefined && <DueNow due={due} />}
      <div class="law-find unprinted">
        <Field label={say.find} type="search" value={asked} onInput={setAsked} />
      </div>
      {found.length === 0 && <Empty>{say.none}</Empty>}
      {groups.map((group) =>
        group.packs.length === 0 ? null : (
          <Section key={group.title(0)} title={group.title(group.packs.length)}>
            <ul class="law-list">
              {group.packs.map((pack) => (
                <LawLine key={packCode(pack)} pack={pack} due={due} />
              ))}
            </ul>
          </Section>
        ),
      )}
      <p class="links-line unprinted">
        <Link href="/vocabulary">{say.vocabulary}</Link>
        <a href="/api/law">{say.program}</a>
      </p>
    </Page>
  );
}

/** By name, as people look for it; the codes of states are in another order. */
function federalFirst(one: RulePack, other: RulePack): number {
  const [federal, second] = [one, other].map(({ jurisdiction }) => (jurisdiction === 'US' ? 0 : 1));
  return (federal ?? 0) - (second ?? 0) || one.name.localeCompare(other.name, 'en');
}

function isLike(pack: RulePack, asked: string): boolean {
  const words = asked.toLowerCase().split(/\s+/).filter(Boolean);
  const text = `${packCode(pack)} ${pack.name} ${pack.agency}`.toLowerCase();
  return words.every((word) => text.includes(word));
}
