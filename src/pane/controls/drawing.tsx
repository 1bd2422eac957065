import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";

/** No drawing is laid out for less: in a narrower pane it is shown smaller, and a pane so narrow is one that is enlarged. */
const LEAST = 260;

/** A drawing (SVG that names itself) made for the width that the pane has, and made anew when that changes. */
export function Drawing({ draw }: { draw: (width: number) => string }) {
  const place = useRef<HTMLDivElement>(null);
  const width = useSignal(0);
  useEffect(() => {
    const element = place.current!;
    const observer = new ResizeObserver(() => (width.value = element.clientWidth));
    observer.observe(element);
    width.value = element.clientWidth;
    return () => observer.disconnect();
  }, []);
  return (
    <div
      ref={place}
      class="lp-drawing"
      dangerouslySetInnerHTML={{ __html: width.value > 0 ? draw(Math.max(LEAST, width.value)) : "" }}
    />
  );
}
