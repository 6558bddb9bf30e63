import { Link } from 'wouter-preact';
import type { DuePack } from '../../../shared/law/list-due-packs.js';
import { BASIS_WORDS, nameDate } from '../../../shared/law/name-law-terms.js';
import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { summarizePack } from '../../../shared/law/summarize-pack.js';
import { tellRulePack } from '../../../shared/law/tell-rule-pack.js';
import { lawPages } from '../words/law-pages.js';
import { hrefOf } from './use-law.js';

const say = lawPages.list;

/** One law in a line, which leads to its page. */
export function LawLine({ pack, due }: { pack: RulePack; due: readonly DuePack[] | undefined }) {
  const { duties, amounts, clocks } = summarizePack(pack);
  const code = packCode(pack);
  const late = due?.find((one) => one.pack === code);
  const told = tellRulePack(pack);
  return (
    <li class="law-line">
      <h3>
        <Link href={hrefOf(pack)}>{pack.name}</Link> <span class="quiet">{code}</span>
      </h3>
      <dl>
        <Pair term={say.may} value={duties.length > 0 ? duties.join('; ') : (told.noReport ?? '')} />
        <Pair term={say.damage} value={amounts.length > 0 ? amounts.join('; ') : say.noAmount} />
        <Pair term={say.clocks} value={clocks.length > 0 ? clocks.join('; ') : say.noClock} />
        <Pair
          term={say.asOf}
          value={nameDate(pack.readOn)}
          about={pack.basis === 'not-read' ? told.read : say.read(BASIS_WORDS[pack.basis])}
        />
        <Pair term={say.doubts} value={String(pack.doubts.length)} />
        {due !== undefined && (
          <Pair
            term={say.recheck}
            value={late === undefined ? say.notDue : say.overdue(nameDate(late.dueOn))}
          />
        )}
      </dl>
      {pack.corrections !== undefined && <p class="law-mark">{say.corrected}</p>}
    </li>
  );
}

function Pair({ term, value, about }: { term: string; value: string; about?: string }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>
        {value}
        {about !== undefined && <span class="quiet"> ({about})</span>}
      </dd>
    </div>
  );
}
