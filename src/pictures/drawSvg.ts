/** The plotting library: put to use here only, without a page, so that every host gets the same picture. */
import { CustomChart, LineChart, type CustomSeriesOption, type LineSeriesOption } from 'echarts/charts';
import { GridComponent, TitleComponent } from 'echarts/components';
import { init, setPlatformAPI, use } from 'echarts/core';
import { SVGRenderer } from 'echarts/renderers';
import type { Colours } from './colours';
import { sayDate, type DateAxis } from './dateAxis';
import { breakLines, fontFamily, sizes, textPx } from './lettering';

use([CustomChart, LineChart, GridComponent, TitleComponent, SVGRenderer]);

/** How a picture is asked for. */
export interface Frame {
  readonly widthPx: number;
  readonly colours: Colours;
}

/** A picture, and what says the same in words and figures. */
export interface Drawing {
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly title: string;
  /** Whole sentences. */
  readonly alt: string;
  readonly headers: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface Plot {
  readonly title: string;
  readonly remarks: readonly string[];
  /** Of the part between the axes. */
  readonly heightPx: number;
  readonly left: number;
  readonly right: number;
  readonly dates: DateAxis;
  readonly yAxis: Readonly<Record<string, unknown>>;
  readonly series: (dates: DateAxis) => readonly (LineSeriesOption | CustomSeriesOption)[];
}

/** A browser would measure texts by its own fonts, and the picture be another than the commands draw. */
setPlatformAPI({ measureText: (text) => ({ width: textPx(text) }) });

/** Room for the labels of dates. */
const datesPx = 24;

export function drawSvg(frame: Frame, plot: Plot): Pick<Drawing, 'svg' | 'widthPx' | 'heightPx'> {
  const { widthPx, colours } = frame;
  const title = breakLines(plot.title, sizes.title, widthPx);
  const remarks = breakLines(plot.remarks.join(' '), sizes.text, widthPx);
  const top = 2 * sizes.edge + (title.length + remarks.length) * sizes.line;
  const heightPx = top + plot.heightPx + datesPx + sizes.edge;
  const chart = init(null, null, { renderer: 'svg', ssr: true, width: widthPx, height: heightPx });
  chart.setOption({
    animation: false,
    backgroundColor: colours.ground,
    textStyle: { fontFamily, fontSize: sizes.text },
    title: {
      text: title.join('\n'),
      subtext: remarks.join('\n'),
      left: sizes.edge,
      top: sizes.edge,
      padding: 0,
      itemGap: 0,
      textStyle: { color: colours.text, fontSize: sizes.title, lineHeight: sizes.line },
      subtextStyle: { color: colours.quiet, fontSize: sizes.text, lineHeight: sizes.line },
    },
    grid: { left: plot.left, right: plot.right, top, height: plot.heightPx, outerBoundsMode: 'none' },
    xAxis: {
      type: 'value',
      min: plot.dates.min,
      max: plot.dates.max,
      axisLine: { lineStyle: { color: colours.soft } },
      axisTick: { customValues: plot.dates.ticks, lineStyle: { color: colours.soft } },
      axisLabel: {
        customValues: plot.dates.labels,
        formatter: (serial: number) => sayDate(serial),
        color: colours.quiet,
        hideOverlap: false,
      },
      splitLine: { lineStyle: { color: colours.faint } },
    },
    yAxis: plot.yAxis,
    series: [...plot.series(plot.dates)],
  });
  const svg = chart.renderToSVGString();
  chart.dispose();
  return { svg: plainSvg(svg), widthPx, heightPx };
}

/** An axis of numbers, from 0 at the bottom. */
export function numberAxis(
  colours: Colours,
  {
    max,
    ticks,
    say,
  }: { readonly max: number; readonly ticks: readonly number[]; say(value: number): string },
): Readonly<Record<string, unknown>> {
  return {
    type: 'value',
    min: 0,
    max,
    axisTick: { customValues: ticks, lineStyle: { color: colours.soft } },
    axisLabel: { customValues: ticks, color: colours.quiet, formatter: say },
    axisLine: { show: true, lineStyle: { color: colours.soft } },
    splitLine: { lineStyle: { color: colours.faint } },
  };
}

/** Where a date and a value lie in the picture. */
export type At = (date: number, value: number) => readonly [number, number];
export type Shape = Readonly<Record<string, unknown>>;

/** Shapes in the coordinates of the axes. */
export function shapes(draw: (at: At) => readonly Shape[]): CustomSeriesOption {
  return {
    type: 'custom',
    silent: true,
    // Over the lines.
    z: 3,
    data: [[0, 0]],
    renderItem: (_, api) => ({
      type: 'group',
      children: draw((date, value) => api.coord([date, value]) as [number, number]) as [],
    }),
  };
}

interface LineLook {
  readonly stroke: string;
  readonly lineWidth?: number;
  readonly lineDash?: readonly number[];
}

export function lineShape(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  style: LineLook,
): Shape {
  return { type: 'line', shape: { x1, y1, x2, y2 }, style: { ...style, fill: 'none' } };
}

export function textShape(
  text: string,
  [x, y]: readonly [number, number],
  style: { readonly colours: Colours; readonly align: 'left' | 'right' | 'center'; readonly bold?: boolean },
): Shape {
  const { colours, align, bold = false } = style;
  return {
    type: 'text',
    x,
    y,
    style: {
      text,
      fill: colours.text,
      // Lines pass behind it.
      stroke: colours.ground,
      lineWidth: 3,
      align,
      verticalAlign: 'middle',
      fontSize: sizes.text,
      fontFamily,
      fontWeight: bold ? 'bold' : 'normal',
    },
  };
}

/**
 * Without what answers a mouse, and without clipping, for nothing lies outside: rules and ids inside a picture would
 * hold for the page around it, and the ids are others each time.
 */
function plainSvg(svg: string): string {
  return svg
    .replace(/<(style|defs)[\s\S]*?<\/\1>/g, '')
    .replace(/ (class|pointer-events|clip-path|ecmeta_\w+)="[^"]*"/g, '')
    .replace(/\n+/g, '\n');
}
