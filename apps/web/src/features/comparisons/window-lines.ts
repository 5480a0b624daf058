import {
  observeWindowOffset,
  observeWindowRect,
  type VirtualItem,
  Virtualizer,
  type VirtualizerOptions,
  windowScroll,
} from "@tanstack/virtual-core";
import type { ListPart } from "./list-parts";

/** How high one is before it is measured, in pixels. */
const LINE = 29;
const HEADING = 44;
/** Lines drawn beyond the edge, so that the keys find the next one. */
const BEYOND = 10;

/** What is in sight, how high the whole list is, and where it begins on the page. */
export interface InSight {
  readonly items: readonly VirtualItem[];
  readonly total: number;
  readonly top: number;
}

type Options = VirtualizerOptions<Window, HTMLElement>;

/** Which lines of a long list the window shows: a store, so that what is drawn hangs on a snapshot. */
export class WindowLines {
  private readonly listeners = new Set<() => void>();
  private readonly virtualizer = new Virtualizer<Window, HTMLElement>(this.options([], 0));
  private inSight: InSight = { items: [], total: 0, top: 0 };

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly snapshot = (): InSight => this.inSight;

  /** Follows the window until what is returned is called. */
  mount(): () => void {
    const { _didMount: follow } = this.virtualizer;
    return follow();
  }

  /** Lists these, from where the list stands on the page. */
  show(parts: readonly ListPart[], list: HTMLElement): void {
    const top = list.getBoundingClientRect().top + globalThis.scrollY;
    this.virtualizer.setOptions(this.options(parts, top));
    const { _willUpdate: observe } = this.virtualizer;
    observe();
    this.publish();
  }

  readonly measure = (line: HTMLElement | null): void => this.virtualizer.measureElement(line);

  scrollTo(place: number): void {
    this.virtualizer.scrollToIndex(place, { align: "center" });
  }

  private options(parts: readonly ListPart[], top: number): Options {
    return {
      count: parts.length,
      getScrollElement: () => globalThis.window,
      estimateSize: (at) => (parts[at]?.is === "heading" ? HEADING : LINE),
      getItemKey: (at) => parts[at]?.key ?? at,
      overscan: BEYOND,
      scrollMargin: top,
      scrollPaddingStart: 110,
      initialOffset: () => globalThis.scrollY,
      observeElementRect: observeWindowRect,
      observeElementOffset: observeWindowOffset,
      scrollToFn: windowScroll,
      onChange: () => this.publish(),
    };
  }

  private publish(): void {
    const { virtualizer } = this;
    this.inSight = {
      items: virtualizer.getVirtualItems(),
      total: virtualizer.getTotalSize(),
      top: virtualizer.options.scrollMargin,
    };
    for (const listener of this.listeners) listener();
  }
}
