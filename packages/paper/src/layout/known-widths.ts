/**
 * Advance widths of the printed faces, so that layout works where no font file can be read (the browser's print door).
 * Read from the installed font files; known-widths.test.ts holds every number to them. Kerning is left out.
 */
import type { Face } from './ink.ts'
import type { Measure } from './text.ts'

/** Codes 32 to 126 in order. [thousandths of the size] */
const WIDTHS: Readonly<Record<Face, string>> = {
  text: '280 281 301 655 594 927 705 160 300 300 433 602 205 368 205 377 648 402 549 574 614 583 598 510 615 598 205 205 553 602 553 520 780 626 619 656 673 567 548 710 690 414 510 627 539 820 689 727 601 753 618 596 558 690 589 840 623 595 607 315 377 315 552 396 268 526 566 500 564 539 311 560 546 278 254 490 239 841 546 552 566 576 340 471 324 536 441 654 461 429 460 319 233 319 555',
  'text-strong':
    '320 283 410 783 619 977 702 222 366 366 434 618 243 374 243 442 652 448 586 605 626 612 632 543 625 561 243 243 573 618 573 614 754 690 639 673 686 580 544 719 679 458 560 659 537 842 700 764 626 781 654 619 617 663 656 883 699 687 621 333 442 333 589 430 314 553 596 520 596 566 367 597 572 315 259 567 314 886 572 573 596 601 372 534 379 570 526 723 533 518 516 370 234 370 533',
  display:
    '180 321 434 672 607 868 672 251 316 316 456 546 244 446 233 339 635 432 563 576 609 547 591 538 602 591 233 239 545 533 541 448 868 713 647 632 712 609 562 716 787 362 342 718 558 873 772 732 610 738 667 601 612 742 709 1021 711 648 623 348 351 348 544 491 346 561 589 516 604 549 374 574 633 318 291 594 310 954 644 577 608 590 470 493 395 632 544 833 569 556 504 361 312 361 589',
}

const FIRST_CODE = 32
/** Any other Latin letter is taken as wide as an M, and one of another script, lent by the browser, as wide as high. */
const OTHER = 'M'
const FIRST_BEYOND_LATIN = 0x370
const AS_WIDE_AS_HIGH = 1000
/** Against kerning and a browser's own rounding. */
const ALLOWANCE = 1.003
/** And against letters pushed apart, which in a short word is more than that. [parts of the size] */
const PUSHED_APART = 0.006

const TABLES = new Map(Object.entries(WIDTHS).map(([face, list]) => [face, list.split(' ').map(Number)]))

/** Width of one letter. [thousandths of the size] */
export function knownWidth(letter: string, face: Face): number {
  const table = TABLES.get(face)
  const at = (one: string) => table?.[(one === '\u00a0' ? FIRST_CODE : (one.codePointAt(0) ?? 0)) - FIRST_CODE]
  if ((letter.codePointAt(0) ?? 0) >= FIRST_BEYOND_LATIN && !/\p{Script=Latin}|\p{P}/u.test(letter))
    return AS_WIDE_AS_HIGH
  return at(letter) ?? at(OTHER) ?? AS_WIDE_AS_HIGH
}

export const KNOWN_MEASURE: Measure = {
  width: (text, face, sizePt) => {
    if (text === '') return 0
    const thousandths = [...text].reduce((sum, letter) => sum + knownWidth(letter, face), 0)
    return ((thousandths / 1000) * ALLOWANCE + PUSHED_APART) * sizePt
  },
  metrics: (face) =>
    face === 'display'
      ? { ascent: 0.935, descent: 0.265, capital: 0.704 }
      : { ascent: 0.95, descent: 0.29, capital: 0.668 },
}
