/**
 * Which cells each formula reads, found out once. Before every calculation the engine asks it of all formulas anew,
 * which for a thousand plots was most of the time that an edit took. What a formula reads hangs on its text and its
 * place, and on where sheets, tables and names are: while none of these changes it is kept.
 */
import { ObjectMatrix, type Injector } from '@univerjs/core';
import {
  FormulaDependencyGenerator,
  IDefinedNamesService,
  IFormulaDependencyGenerator,
  ISuperTableService,
  type BaseAstNode,
  type FormulaDependencyTree,
  type IFormulaData,
  type IFormulaDataItem,
  type IFormulaDependencyTree,
  type IOtherFormulaData,
  type IUnitData,
} from '@univerjs/engine-formula';
import { breakCircles } from './circles';
import { RunList, type Formula } from './runList';

/** Kinds of nodes in a parsed formula, by the engine's numbers: it exports no names for them. */
const kinds = { function: 4, union: 10, prefix: 11, suffix: 12 };

abstract class KeptReadings extends FormulaDependencyGenerator {
  /** By the number that the engine gives a formula's cell. */
  private known = new Map<number, FormulaDependencyTree>();
  /** Of the formulas that are being looked into, those whose readings may be kept. */
  private fresh: FormulaDependencyTree[] = [];
  private knownIn = '';
  private readonly fixed = new WeakMap<BaseAstNode, boolean>();
  private isAskedForAll = false;

  /** Where the tables and the names of the workbook are. */
  protected abstract places(unitId: string): unknown;

  protected override async _generateTreeList(
    formulaData: IFormulaData,
    otherFormulaData: IOtherFormulaData,
    unitData: IUnitData,
  ): Promise<IFormulaDependencyTree[]> {
    if (this.isSpoilt(unitData)) this.known.clear();
    const { kept, due } = this.divide(formulaData);
    this.fresh = [];
    const found = await super._generateTreeList(due, otherFormulaData, unitData);
    // Once it is stopped the engine takes what it has not read for nothing.
    const isStopped = this._runtimeService.isStopExecution();
    this.known = new Map(isStopped ? [] : [...kept, ...this.fresh].map((tree) => [tree.treeId, tree]));
    if (!this.isAskedForAll || kept.length === 0) return [...kept, ...found];
    // A formula that makes a reference out of a text reads what only the others can tell.
    this.known.clear();
    return this._generateTreeList(formulaData, otherFormulaData, unitData);
  }

  private isSpoilt(unitData: IUnitData): boolean {
    const config = this._currentConfigService;
    const sheets = Object.entries(unitData).map(([unitId, ofUnit]) => [
      this.places(unitId),
      Object.entries(ofUnit).map(([id, sheet]) => [id, sheet?.rowCount, sheet?.columnCount]),
    ]);
    const where = JSON.stringify([sheets, config.getSheetNameMap()]);
    const isElsewhere = where !== this.knownIn;
    this.knownIn = where;
    return (
      isElsewhere ||
      config.isForceCalculate() ||
      // After lists have spilled the engine looks into what formulas read, and it empties that after each look.
      config.getExcludedRange() != null ||
      [
        config.getClearDependencyTreeCache(),
        config.getDirtyNameMap(),
        config.getDirtyDefinedNameMap(),
        config.getDirtySuperTableMap(),
      ].some((changes) => Object.keys(changes).length > 0)
    );
  }

  /** What is kept of the formulas that are as they were, and the others in the engine's form. */
  private divide(formulaData: IFormulaData): { kept: FormulaDependencyTree[]; due: IFormulaData } {
    const kept: FormulaDependencyTree[] = [];
    const due: IFormulaData = {};
    for (const [unitId, sheets] of Object.entries(formulaData)) {
      const dueSheets: NonNullable<IFormulaData[string]> = {};
      due[unitId] = dueSheets;
      for (const [sheetId, cells] of Object.entries(sheets ?? {})) {
        const dueCells = new ObjectMatrix<IFormulaDataItem>();
        dueSheets[sheetId] = dueCells.getMatrix();
        new ObjectMatrix(cells ?? {}).forValue((row, column, item) => {
          if (item == null) return;
          const id = this._dependencyManagerService.getFormulaDependency(unitId, sheetId, row, column);
          const tree = id == null ? undefined : this.known.get(id);
          // One that is written as another one's, moved, is left to the engine.
          if (tree?.formula === item.f && item.si == null) kept.push(tree);
          else dueCells.setValue(row, column, item);
        });
      }
    }
    for (const tree of kept) {
      tree.resetState();
      tree.isDirty = this.isWritten(tree);
      this._dependencyTreeCache.set(tree.treeId, tree);
    }
    return { kept, due };
  }

  private isWritten(tree: FormulaDependencyTree): boolean {
    return this._currentConfigService
      .getDirtyRanges()
      .some(({ sheetId, range }) => sheetId === tree.subUnitId && tree.inRangeData(range));
  }

  protected override _includeTree(tree: IFormulaDependencyTree, node: BaseAstNode): boolean {
    if (isPlain(tree) && this.isFixed(node)) this.fresh.push(tree);
    return super._includeTree(tree, node);
  }

  /** What it reads is written in it, and it is calculated only when that changes. */
  private isFixed(node: BaseAstNode): boolean {
    const known = this.fixed.get(node);
    if (known !== undefined) return known;
    const { nodeType } = node;
    const isFixed =
      !node.isForcedCalculateFunction() &&
      !(nodeType === kinds.function && node.isAddress()) &&
      nodeType !== kinds.union &&
      !(nodeType === kinds.prefix && node.getToken() === '@') &&
      !(nodeType === kinds.suffix && node.getToken() === '#') &&
      node.getChildren().every((child) => this.isFixed(child));
    this.fixed.set(node, isFixed);
    return isFixed;
  }

  protected override async _calculateListByFunctionRefNode(trees: IFormulaDependencyTree[]): Promise<void> {
    this.isAskedForAll = trees.some(({ addressFunctionNodes }) => addressFunctionNodes.length > 0);
    if (this.isAskedForAll) await super._calculateListByFunctionRefNode(trees);
  }

  /** A formula that reads only what came out as it was before is not calculated. */
  protected override _calculateRunList(trees: IFormulaDependencyTree[]): Formula[] {
    const due = new Set(trees.map(({ treeId }) => treeId));
    const formulas = super._calculateRunList(trees);
    if (super._checkIsCycleDependency(formulas)) {
      return breakCircles(formulas, (tree) =>
        this._dependencyManagerService.searchDependency(tree.toRTreeItem()),
      );
    }
    const isAllDue = formulas.length === due.size;
    const hasSpilled = this._currentConfigService.getExcludedRange() != null;
    const isOfCells = formulas.every(({ formulaId, featureId }) => formulaId == null && featureId == null);
    if (isAllDue || hasSpilled || !isOfCells || this.isAskedForAll) return formulas;
    // Later it cannot be asked.
    const readers = new Map(
      formulas.map((tree) => [
        tree.treeId,
        this._dependencyManagerService.searchDependency(tree.toRTreeItem()),
      ]),
    );
    const list = new RunList(
      formulas,
      due,
      ({ treeId }) => readers.get(treeId) ?? [],
      (formula) => this.hasChanged(formula),
    );
    // All that the engine asks of a list of formulas is there.
    return list as unknown as Formula[];
  }

  /** None is left in the list that it is asked of. */
  protected override _checkIsCycleDependency(): boolean {
    return false;
  }

  /** Its result against what stands in its cell. */
  private hasChanged({ unitId, subUnitId, row, column, isDirty }: Formula): boolean {
    const config = this._currentConfigService;
    const runtime = this._runtimeService;
    // What was written anew may look otherwise.
    if (isDirty) return true;
    const spills = [runtime.getUnitArrayFormula(), config.getArrayFormulaRange()];
    if (spills.some((ranges) => ranges[unitId]?.[subUnitId]?.[row]?.[column] != null)) return true;
    const now = runtime.getUnitData()[unitId]?.[subUnitId]?.getValue(row, column);
    const before = config.getUnitData()[unitId]?.[subUnitId]?.cellData.getValue(row, column);
    return now?.v !== before?.v || now?.t !== before?.t;
  }
}

function isPlain(tree: IFormulaDependencyTree): tree is FormulaDependencyTree {
  return !tree.isVirtual && tree.formulaId == null && tree.featureId == null;
}

/** Before the workbook is made. */
export function keepReadings(injector: Injector): void {
  class KeptHere extends KeptReadings {
    protected override places(unitId: string): unknown {
      const tables = injector.get(ISuperTableService).getTableMap(unitId) ?? new Map();
      const names = injector.get(IDefinedNamesService).getDefinedNameMap(unitId);
      return [
        [...tables].map(([name, { sheetId, range, titleMap }]) => [name, sheetId, range, [...titleMap]]),
        names,
      ];
    }
  }
  injector.replace([IFormulaDependencyGenerator, { useClass: KeptHere }]);
}
