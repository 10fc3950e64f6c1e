/** Marks on the place ruler the stop that stands highest in the view, and shows the parts of its section. */
export function bindPlaceRuler(): void {
  const links = new Map(
    [...document.querySelectorAll<HTMLAnchorElement>(".place a")].map((link) => [link.hash.slice(1), link]),
  );
  const stops = [...links.keys()].flatMap((id) => document.getElementById(id) ?? []);
  const passed = new Set<Element>();
  const watcher = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting, boundingClientRect, rootBounds } of entries) {
        const above = boundingClientRect.top < (rootBounds?.bottom ?? 0);
        if (isIntersecting || above) passed.add(target);
        else passed.delete(target);
      }
      mark(stops.findLast((stop) => passed.has(stop)) ?? stops[0]);
    },
    { rootMargin: "0px 0px -70% 0px" },
  );
  for (const stop of stops) watcher.observe(stop);

  function mark(here: Element | undefined): void {
    for (const [id, link] of links) {
      if (id === here?.id) link.setAttribute("aria-current", "location");
      else link.removeAttribute("aria-current");
    }
    showParts(here && links.get(here.id));
  }
}

/** Shows the parts that stand under the same section as a link of the ruler. */
function showParts(link: HTMLAnchorElement | undefined): void {
  const stops = [...document.querySelectorAll<HTMLElement>(".place li")];
  const here = stops.findIndex((stop) => link && stop.contains(link));
  const isPart = (stop: HTMLElement | undefined) => stop?.classList.contains("part") ?? false;
  const from = stops.findLastIndex((stop, i) => i <= here && !isPart(stop));
  const after = stops.findIndex((stop, i) => i > from && !isPart(stop));
  stops.forEach((stop, i) => {
    stop.classList.toggle("near", i > from && (after < 0 || i < after));
  });
}
