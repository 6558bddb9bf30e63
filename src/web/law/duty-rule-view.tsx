import { useId } from 'preact/hooks';
import { tellDutyRule, type ToldPoint } from '../../../shared/law/tell-duty-rule.js';
import type { DutyRule, NoticeRule } from '../../../shared/law/rule-pack.js';
import { tellCondition } from '../../../shared/law/tell-rule-pack.js';
import { lawPages } from '../words/law-pages.js';

const say = lawPages.page;

/** One duty's rule: what calls for it, by when, who owes it and to whom. */
export function DutyRuleView({ rule }: { rule: DutyRule | NoticeRule }) {
  const { triggers, limits, who, to } = tellDutyRule(rule);
  const condition = 'condition' in rule ? tellCondition(rule) : null;
  const telephone = 'telephone' in rule ? rule.telephone : undefined;
  return (
    <div class="law-rule">
      {condition !== null && (
        <p>
          <strong>{say.onlyWhen}:</strong> {condition}
        </p>
      )}
      <Points title={say.calledFor} points={triggers} numbered />
      <Points title={say.byWhen} points={limits} />
      <Points title={say.whoOwes} points={[{ ...who, text: upperFirst(who.text) }]} />
      <Points title={say.toWhom} points={[{ text: to, below: [], sources: [] }]} />
      {telephone !== undefined && (
        <Points
          title={say.telephone}
          points={[{ text: `${telephone.name}: ${telephone.number}`, below: [], sources: [] }]}
        />
      )}
    </div>
  );
}

function Points({
  title,
  points,
  numbered = false,
}: {
  title: string;
  points: readonly ToldPoint[];
  numbered?: boolean;
}) {
  const id = useId();
  const List = numbered ? 'ol' : 'ul';
  return (
    <div class="law-points">
      <h3 id={id}>{title}</h3>
      <List aria-labelledby={id}>
        {points.map(({ text, below, sources }) => (
          <li key={text}>
            {text}
            {below.map((words) => (
              <span class="law-below" key={words}>
                {words}
              </span>
            ))}
            {sources.length > 0 && (
              <ul>
                {sources.map((words) => (
                  <li class="law-below" key={words}>
                    {words}
                  </li>
                ))}
              </ul>
            )}
          </li>
        ))}
      </List>
    </div>
  );
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
