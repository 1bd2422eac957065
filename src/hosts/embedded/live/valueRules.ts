import type { Worksheet } from "@univerjs/core";
import { generateRandomId, ICommandService, LocaleService, LocaleType, mergeLocales } from "@univerjs/core";
import type {
  IConditionalFormattingRuleConfig,
  IConditionFormattingRule,
  CFNumberOperator,
  CFTextOperator,
  CFValueType,
} from "@univerjs/sheets-conditional-formatting";
import {
  AddConditionalRuleMutation,
  CFRuleType,
  CFSubRuleType,
  ConditionalFormattingRuleModel,
  UniverSheetsConditionalFormattingPlugin,
} from "@univerjs/sheets-conditional-formatting";
import { UniverSheetsConditionalFormattingUIPlugin } from "@univerjs/sheets-conditional-formatting-ui";
import "@univerjs/sheets-conditional-formatting-ui/lib/index.css";
import enUS from "@univerjs/sheets-conditional-formatting-ui/locale/en-US";
import type { Look, ScalePoint, Shows, ValueRule } from "../../../xlsx/book.ts";
import { styleOf } from "../lookStyle.ts";
import type { EmbeddedSheet } from "../runningSheet.ts";
import { areaOf, rangeOf } from "../areas.ts";
import type { LivePart } from "./livePart.ts";
import { startPlugins } from "./startPlugins.ts";

/** Puts formats that depend on values into a running sheet: they are shown and go with their cells. They are changed where the file was made. */
export async function startValueRules(sheet: EmbeddedSheet): Promise<LivePart<ValueRule>> {
  const injector = sheet.univer.__getInjector();
  injector.get(LocaleService).load({ [LocaleType.EN_US]: mergeLocales(enUS) });
  // Its panel would change rules, and such changes are not written into the file.
  const options = { menu: { "sheet.operation.open.conditional.formatting.panel": { hidden: true } } };
  const plugins = [
    [UniverSheetsConditionalFormattingPlugin],
    [UniverSheetsConditionalFormattingUIPlugin, options],
  ] as const;
  await startPlugins(sheet, plugins, AddConditionalRuleMutation.id);
  const known = new Map<string, ValueRule>();
  return {
    put(unitId, subUnitId, rules) {
      // Each goes before those that are there, and the first wins.
      for (const rule of [...rules].reverse()) {
        const cfId = generateRandomId();
        known.set(cfId, rule);
        const { areas, shows, last = false } = rule;
        const data: IConditionFormattingRule = {
          cfId,
          ranges: areas.map(rangeOf),
          stopIfTrue: last,
          rule: configOf(shows),
        };
        injector
          .get(ICommandService)
          .syncExecuteCommand(AddConditionalRuleMutation.id, { unitId, subUnitId, rule: data }, { onlyLocal: true });
      }
    },
    of(worksheet: Worksheet) {
      const all = injector
        .get(ConditionalFormattingRuleModel)
        .getSubunitRules(worksheet.getUnitId(), worksheet.getSheetId());
      return (all ?? []).flatMap(({ cfId, ranges, rule }) => {
        const its = known.get(cfId);
        if (!its) return [];
        const formula = "subType" in rule && rule.subType === CFSubRuleType.formula ? rule.value : null;
        const shows = formula !== null && its.shows.kind === "formula" ? { ...its.shows, formula } : its.shows;
        return [{ ...its, areas: ranges.map(areaOf), shows }];
      });
    },
  };
}

function configOf(shows: Shows): IConditionalFormattingRuleConfig {
  if (shows.kind === "scale")
    return {
      type: CFRuleType.colorScale,
      config: shows.points.map((point, index) => ({ index, color: point.color, value: valueOf(point) })),
    };
  if (shows.kind === "bar")
    return {
      type: CFRuleType.dataBar,
      isShowValue: true,
      config: {
        min: valueOf(shows.from),
        max: valueOf(shows.to),
        isGradient: true,
        positiveColor: shows.color,
        nativeColor: shows.color,
      },
    };
  return {
    type: CFRuleType.highlightCell,
    style: ownStyle(shows.look),
    ...conditionOf(shows),
  } as IConditionalFormattingRuleConfig;
}

function conditionOf(shows: Exclude<Shows, { kind: "scale" | "bar" }>): object {
  switch (shows.kind) {
    case "number": {
      const two = shows.operator === "between" || shows.operator === "notBetween";
      const operator = shows.operator as CFNumberOperator;
      return { subType: CFSubRuleType.number, operator, value: two ? shows.values : shows.values[0] };
    }
    case "formula":
      return { subType: CFSubRuleType.formula, value: shows.formula };
    case "text":
      return { subType: CFSubRuleType.text, operator: shows.operator as CFTextOperator, value: shows.text };
    case "duplicates":
      return { subType: CFSubRuleType.duplicateValues };
    case "uniques":
      return { subType: CFSubRuleType.uniqueValues };
  }
}

function valueOf({ at, value }: ScalePoint): { type: CFValueType; value?: number } {
  return { type: at as CFValueType, ...(value !== undefined && { value }) };
}

/** Letters and fill: what such a format may change here. */
function ownStyle({ bold, italic, underline, strike, color, fill }: Look): ReturnType<typeof styleOf> {
  return styleOf({
    ...(bold && { bold }),
    ...(italic && { italic }),
    ...(underline && { underline }),
    ...(strike && { strike }),
    ...(color && { color }),
    ...(fill && { fill }),
  });
}
