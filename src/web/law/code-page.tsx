import { Link } from 'wouter-preact';
import { nameDate } from '../../../shared/law/name-law-terms.js';
import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { tellRulePack, titleOfNotice, WHO_IS_WHO } from '../../../shared/law/tell-rule-pack.js';
import type { PageProps } from '../app/page-route.js';
import { CautionStrip } from '../look/caution-strip.js';
import { Empty, ErrorState, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintButton } from '../look/print-button.js';
import { PrintedBy } from '../look/printed-by.js';
import { DefinitionRows, Section } from '../look/section.js';
import { lawPages } from '../words/law-pages.js';
import { DutyRuleView } from './duty-rule-view.js';
import { LawCases } from './law-cases.js';
import './law.css';
import { Sources } from './sources.js';
import { hrefOf, type LawInUse, useLaw } from './use-law.js';

const say = lawPages.page;

/** One jurisdiction's law, or that on one other matter: the rule with every source, what is not known, and cases. */
export default function CodePage({ params }: PageProps) {
  const code = (params['code'] ?? '').toUpperCase();
  const { data: law, error, again } = useLaw();
  const lead = (
    <p>
      <Link href="/law">{say.all}</Link>
    </p>
  );
  if (law === undefined) {
    return (
      <Page title={code} lead={lead}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const pack = law.packs.find((one) => packCode(one) === code);
  if (pack === undefined) {
    return (
      <Page title={say.unknownCode(code)} lead={lead}>
        <Empty>{say.ask}</Empty>
      </Page>
    );
  }
  return (
    <Page title={pack.name} lead={lead} strip={<CautionStrip />} actions={<PrintButton />}>
      <PackView pack={pack} law={law} />
    </Page>
  );
}

function PackView({ pack, law }: { pack: RulePack; law: LawInUse }) {
  const { packs } = law;
  const told = tellRulePack(pack);
  const others = packs.filter((one) => one !== pack && one.jurisdiction === pack.jurisdiction);
  return (
    <>
      <PrintedBy />
      <p>{lawPages.notAdvice}</p>
      {law.kept && <Note kind="offline">{lawPages.kept}</Note>}
      <DefinitionRows
        rows={[
          { term: say.agency, value: pack.agency },
          { term: say.read, value: told.read },
          ...(told.inForce === null ? [] : [{ term: say.inForce, value: told.inForce }]),
          { term: say.who, value: WHO_IS_WHO },
        ]}
      />
      {told.corrections.length > 0 && (
        <Section title={say.corrections}>
          <p>{say.correctionsAbout}</p>
          <Lines lines={told.corrections} />
        </Section>
      )}
      {pack.subject === undefined && (
        <Section title={say.report}>
          {pack.report === null ? <p>{told.noReport}</p> : <DutyRuleView rule={pack.report} />}
        </Section>
      )}
      {pack.notices.map((notice) => (
        <Section key={notice.id} title={titleOfNotice(notice)}>
          <DutyRuleView rule={notice} />
        </Section>
      ))}
      <Listed title={say.counts} lines={told.scope} />
      <Listed title={say.livery} lines={told.livery} />
      {told.aids.length > 0 && (
        <Section title={say.aids}>
          <ul class="law-lines">
            {told.aids.map(({ question, text }) => (
              <li key={question}>
                <strong>{question}</strong>
                <span class="law-below">{text}</span>
              </li>
            ))}
          </ul>
        </Section>
      )}
      <Section title={say.doubts}>
        {pack.doubts.length === 0 ? <p>{say.noDoubts}</p> : <Lines lines={pack.doubts} />}
      </Section>
      <Section title={say.sources}>
        <p>{say.readOn(nameDate(pack.readOn))}</p>
        <Sources pack={pack} />
      </Section>
      <LawCases key={packCode(pack)} pack={pack} packs={packs} />
      {others.length > 0 && (
        <Section title={say.others}>
          <p class="links-line">
            {others.map((one) => (
              <Link key={packCode(one)} href={hrefOf(one)}>
                {one.name}
              </Link>
            ))}
          </p>
        </Section>
      )}
    </>
  );
}

function Listed({ title, lines }: { title: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <Section title={title}>
      <Lines lines={lines} />
    </Section>
  );
}

function Lines({ lines }: { lines: readonly string[] }) {
  return (
    <ul class="law-lines">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
