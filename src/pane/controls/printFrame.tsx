import { useRef } from "preact/hooks";

/** Prints a whole document (HTML text) as soon as it is there, without showing it; `done` once the browser's print is over. */
export function PrintFrame({ page, title, done }: { page: string | null; title: string; done: () => void }) {
  const frame = useRef<HTMLIFrameElement>(null);
  if (page === null) return null;
  return (
    <iframe
      ref={frame}
      key={page}
      class="lp-pages"
      title={title}
      srcdoc={page}
      onLoad={() => {
        const pages = frame.current!.contentWindow!;
        pages.addEventListener("afterprint", done);
        pages.focus();
        pages.print();
      }}
    />
  );
}
