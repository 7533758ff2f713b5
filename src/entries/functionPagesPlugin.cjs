/**
 * A webpack plugin: writes the pages of the function reference in each language, and names those in English to
 * functions.json where there is one.
 */
const { execFile } = require('node:child_process');
const { readFileSync } = require('node:fs');
const path = require('node:path');
const { promisify } = require('node:util');

const here = (...parts) => path.join(__dirname, ...parts);
/** As texts/language lists them. */
const [, listed] = /^export const languages = \[(.*)\]/m.exec(
  readFileSync(here('..', 'texts', 'language.ts'), 'utf8'),
);
const languages = [...listed.matchAll(/'(\w+)'/g)].map(([, language]) => language);
const styles = [here('..', 'taskpane', 'colours.css'), here('functionPages.css')];

module.exports = class FunctionPagesPlugin {
  /** @param address where the folder of the pages will stand; for functions.json */
  constructor({ files, readme, address }) {
    Object.assign(this, { files, readme, address });
  }

  apply(compiler) {
    const { Compilation, sources } = compiler.webpack;
    const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
    compiler.hooks.thisCompilation.tap('FunctionPages', (compilation) => {
      const emit = (name, text) => compilation.emitAsset(`functions/${name}`, new sources.RawSource(text));
      // Written while the rest is built.
      const pages = this.writePages();
      pages.catch(() => undefined);
      compilation.hooks.processAssets.tapPromise({ name: 'FunctionPages', stage }, async () => {
        for (const [name, text] of Object.entries(await pages)) emit(name, text);
        emit('pages.css', styles.map((file) => readFileSync(file, 'utf8')).join('\n'));
        for (const file of [...styles, ...this.files, this.readme]) compilation.fileDependencies.add(file);
        if (this.address === undefined) return;
        compilation.updateAsset(
          'functions.json',
          (old) => new sources.RawSource(this.withHelp(old.source())),
        );
      });
    });
  }

  /** In a program of its own for each: the engine that runs the examples changes globals. */
  async writePages() {
    const inEach = languages.map(async (language) => {
      const asked = [here('runCommand.mjs'), 'functionPages', '--language', language];
      const args = [...asked, here('..'), this.readme, ...this.files];
      const { stdout } = await promisify(execFile)(process.execPath, args, { maxBuffer: 2 ** 26 });
      return JSON.parse(stdout);
    });
    return Object.assign({}, ...(await Promise.all(inEach)));
  }

  withHelp(json) {
    const described = JSON.parse(json);
    for (const one of described.functions) one.helpUrl = `${this.address}/${one.id}.html`;
    return JSON.stringify(described, null, 2);
  }
};
