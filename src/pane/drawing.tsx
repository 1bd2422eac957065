import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";

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
  return <div ref={place} class="lp-drawing" dangerouslySetInnerHTML={{ __html: width.value > 0 ? draw(width.value) : "" }} />;
}
