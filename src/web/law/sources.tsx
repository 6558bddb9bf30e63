import { BASIS_WORDS } from '../../../shared/law/name-law-terms.js';
import type { Citation, DutyRule, ReadingBasis, RulePack } from '../../../shared/law/rule-pack.js';
import { lawPages } from '../words/law-pages.js';

const say = lawPages.page;

/** Every text that was read, and what single values rest on where that is weaker than the pack; memory is marked. */
export function Sources({ pack }: { pack: RulePack }) {
  return (
    <ul class="law-lines">
      {pack.citations.map((citation) => (
        <CitationLine key={`${citation.section} ${citation.url}`} citation={citation} />
      ))}
      {weakerOf(pack).map(({ what, basis }) => (
        <li key={what}>
          {what} <strong class="law-mark">{basis === 'memory' ? say.memory : BASIS_WORDS[basis]}</strong>
        </li>
      ))}
    </ul>
  );
}

/** A copy that lies in a code archive has no address that a browser opens. */
function CitationLine({ citation: { section, url, kind } }: { citation: Citation }) {
  return (
    <li>
      {section} <span class="quiet">({say.kinds[kind]})</span>
      <span class="law-below">
        {/^https?:/.test(url) ? (
          <a href={url} rel="noreferrer" class="law-address">
            {url}
          </a>
        ) : (
          <span class="law-address">{url}</span>
        )}
      </span>
    </li>
  );
}

function weakerOf({
  report,
  notices,
  liveryDuties,
  basis,
}: RulePack): { what: string; basis: ReadingBasis }[] {
  const rules: readonly DutyRule[] = [...(report === null ? [] : [report]), ...notices];
  const triggers = rules.flatMap((rule) =>
    rule.triggers.flatMap((trigger) =>
      trigger.basis === undefined ? [] : [{ what: trigger.citation ?? trigger.note, basis: trigger.basis }],
    ),
  );
  const duties = liveryDuties.map(({ citation, basis: read }) => ({ what: citation, basis: read }));
  const weaker = [...triggers, ...duties].filter((one) => one.what !== '' && one.basis !== basis);
  return [...new Map(weaker.map((one) => [one.what, one])).values()];
}
