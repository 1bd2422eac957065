import { useEffect, useRef, useState } from "preact/hooks";
import { texts } from "../words/texts.ts";

/** How long a print window may take to come. Milliseconds. */
const PATIENCE = 1_500;

/**
 * Prints a whole document (HTML text) as soon as it is there, without showing it; `done` once the browser's print is over.
 *
 * Where Excel shows the pane, printing may be switched off without a word. Then it says so, and offers the page in the browser.
 *
 * `elsewhere` opens a page there that prints the same by itself.
 */
export function PrintFrame(given: {
  page: string | null;
  title: string;
  elsewhere: (() => void) | undefined;
  done: () => void;
}) {
  const { page, title, elsewhere, done } = given;
  const frame = useRef<HTMLIFrameElement>(null);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const [refused, setRefused] = useState(false);
  useEffect(() => () => clearTimeout(timer.current), []);
  useEffect(() => void (page !== null && setRefused(false)), [page]);
  const print = () => {
    const pages = frame.current!.contentWindow!;
    const came = () => clearTimeout(timer.current);
    timer.current = setTimeout(() => (setRefused(true), done()), PATIENCE);
    pages.addEventListener("beforeprint", came);
    pages.addEventListener("afterprint", () => (came(), done()));
    pages.focus();
    pages.print();
  };
  return (
    <>
      {page !== null && <iframe ref={frame} key={page} class="lp-pages" title={title} srcdoc={page} onLoad={print} />}
      <div role="status">
        {refused && (
          <>
            <p class="lp-wrong">{texts.noPrint}</p>
            {elsewhere && (
              <button type="button" onClick={elsewhere}>
                {texts.printElsewhere}
              </button>
            )}
          </>
        )}
      </div>
    </>
  );
}
