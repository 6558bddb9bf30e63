import { askDetermination } from './determination/ask-determination.js';
import { moveToNow } from './determination/move-to-now.js';
import { showDetermination } from './determination/show-determination.js';
import { showProblem } from './determination/show-problem.js';
import { element, onPage } from './look/element.js';

interface Sample {
  file: string;
  title: string;
  about: string;
}

const form = onPage('facts', HTMLFormElement);
const samples = onPage('samples', HTMLDivElement);
const facts = onPage('document', HTMLTextAreaElement);
const button = onPage('determine', HTMLButtonElement);
const progress = onPage('progress', HTMLParagraphElement);
const answer = onPage('answer', HTMLElement);

async function get<Body>(path: string, read: (response: Response) => Promise<Body>): Promise<Body> {
  const response = await fetch(path);
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return read(response);
}

async function choose({ file }: Sample): Promise<void> {
  const text = await get(`/samples/${file}`, (response) => response.text());
  facts.value = moveToNow(text, Date.now());
}

function offer(sample: Sample, place: number): HTMLElement {
  const input = element('input', { type: 'radio', name: 'sample', value: sample.file });
  input.checked = place === 0;
  input.addEventListener('change', () => void orSay(choose(sample)));
  return element(
    'label',
    { class: 'choice' },
    input,
    element('span', {}, sample.title, element('small', {}, sample.about)),
  );
}

async function offerSamples(): Promise<void> {
  const list = await get('/samples/samples.json', (response) => response.json() as Promise<Sample[]>);
  samples.replaceChildren(...list.map(offer));
  const [first] = list;
  if (first !== undefined) await choose(first);
}

/** A sample that cannot be had leaves the page usable: facts can be typed. */
async function orSay(work: Promise<void>): Promise<void> {
  try {
    await work;
  } catch {
    progress.textContent = 'The samples could not be loaded. Paste or type the facts instead.';
  }
}

async function determine(): Promise<void> {
  if (button.getAttribute('aria-disabled') === 'true') return;
  button.setAttribute('aria-disabled', 'true');
  progress.textContent = 'Determining…';
  const came = await askDetermination(facts.value);
  button.removeAttribute('aria-disabled');
  progress.textContent = '';
  facts.toggleAttribute('aria-invalid', false);
  if (came.kind === 'determination') {
    answer.replaceChildren(...showDetermination(came.determination, Date.now()));
  } else {
    facts.setAttribute('aria-invalid', 'true');
    answer.replaceChildren(...showProblem(came.title, came.errors));
  }
  goTo(answer.querySelector('h2'));
}

/** Where the answer stands below the facts its heading comes to the top; beside them nothing moves. */
function goTo(heading: HTMLElement | null): void {
  heading?.focus({ preventScroll: true });
  heading?.scrollIntoView({ block: matchMedia('(width < 60rem)').matches ? 'start' : 'nearest' });
}

form.addEventListener('submit', (event) => {
  event.preventDefault();
  void determine();
});

// On paper every reason is shown.
addEventListener('beforeprint', () => {
  for (const reasons of document.querySelectorAll('details')) reasons.open = true;
});

void orSay(offerSamples());
