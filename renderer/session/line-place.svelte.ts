import type { RouteOutline } from '../engine/route-outline.ts';

/** Which stage of which line is looked at. It is kept while other pages are read. */
export class LinePlace {
  #route = $state.raw('');
  #line = $state.raw('');
  #stage = $state.raw('');

  get route(): string {
    return this.#route;
  }

  get line(): string {
    return this.#line;
  }

  get stage(): string {
    return this.#stage;
  }

  goToLine(route: string, line: string): void {
    if (route === this.#route && line === this.#line) return;
    this.#route = route;
    this.#line = line;
    this.#stage = '';
  }

  goToStage(stage: string): void {
    this.#stage = stage;
  }

  /** Moves on to something that is there, when what was looked at has gone; says whether it had to. */
  settle(routes: readonly RouteOutline[]): boolean {
    const route =
      routes.find(({ id }) => id === this.#route) ?? routes.find(({ faces }) => faces === 'with') ?? routes[0];
    const longest = [...(route?.lines ?? [])].sort((a, b) => b.stages.length - a.stages.length)[0];
    const line = route?.lines.find(({ id }) => id === this.#line) ?? longest;
    if (route === undefined || line === undefined) return false;
    const hasMoved = route.id !== this.#route || line.id !== this.#line;
    this.goToLine(route.id, line.id);
    if (!line.stages.some(({ id }) => id === this.#stage)) this.#stage = line.stages[0]?.id ?? '';
    return hasMoved;
  }
}
