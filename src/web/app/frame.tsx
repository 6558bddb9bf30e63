import type { ComponentChildren } from 'preact';
import { common } from '../words/common.js';
import { Header } from './header.js';
import { NewerVersion } from './newer-version.js';

/** What stands around every page: the way past it, the list of pages, who is there, and the cautions. */
export function Frame({ children }: { children: ComponentChildren }) {
  return (
    <>
      <a class="skip" href="#page">
        {common.skip}
      </a>
      <Header />
      <NewerVersion />
      {children}
      <footer class="foot">
        <p>{common.caution.help}</p>
        <p>{common.caution.law}</p>
      </footer>
    </>
  );
}
