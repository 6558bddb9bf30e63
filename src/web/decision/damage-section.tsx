import { nameJurisdiction } from '../../../shared/determination/duty-words.js';
import { nameAmount } from '../../../shared/law/name-law-terms.js';
import { dollars } from '../../../shared/quantity/cents.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { decision as say } from '../words/decision.js';
import { type DamageAgainst, damageAgainst, reaches } from './damage-against.js';
import { DamageScale } from './damage-scale.js';
import { type Matter, packOf } from './use-matter.js';

/** The damage as a range against the amounts of the laws: in words, and drawn below for those who see it. */
export function DamageSection({ matter }: { matter: Matter }) {
  const { facts, determination } = matter.determined;
  const all = damageAgainst(facts, determination, (jurisdiction) => packOf(matter, jurisdiction));
  if (all.length === 0) return null;
  return (
    <Section title={say.damage.title}>
      <ul class="against">
        {all.map((one) => (
          <li key={`${one.jurisdiction} ${one.test}`}>
            <Against one={one} />
          </li>
        ))}
      </ul>
      <p class="quiet">{say.damage.notCounted}</p>
    </Section>
  );
}

function Against({ one }: { one: DamageAgainst }) {
  return (
    <>
      <p>
        <strong>{say.damage.of[one.test]}</strong> {rangeWords(one)}
      </p>
      {one.amounts.map((reading, index) => {
        const reached = reaches(one, reading);
        const amount = nameAmount(reading.amountUsd, reading.comparison);
        return (
          <p key={`${reading.source} ${amount}`}>
            <Sign of={reached} />
            {index === 0
              ? say.damage.law(sentence(nameJurisdiction(one.jurisdiction)), amount)
              : say.damage.another(amount, reading.source)}
            : {say.damage.reached[reached]}.
          </p>
        );
      })}
      <DamageScale one={one} />
    </>
  );
}

function rangeWords({ low, high }: DamageAgainst): string {
  if (low === high) return say.damage.exact(dollars(low));
  return Number.isFinite(high)
    ? say.damage.range(dollars(low), dollars(high))
    : say.damage.unbounded(dollars(low));
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
