// Drives a classic Notebook as a person would: classic_notebook.js URL CHROMIUM SCREENSHOT_FOLDER
// The notebook "worksheet.ipynb" must lie in the server's folder. Ends with status 0 if everything held.
const { chromium } = require('playwright-core');

const [url, executablePath, shots] = process.argv.slice(2);
const SECONDS = 1000;

function check(what, condition, found) {
  if (!condition) throw new Error(`FAILED: ${what}: ${JSON.stringify(found)}`);
  console.log('ok:', what);
}

async function main() {
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  const page = await (await browser.newContext({ viewport: { width: 1200, height: 1400 } })).newPage();
  page.on('dialog', dialog => dialog.accept());
  try {
    await page.goto(url, { waitUntil: 'load' });
    await page.waitForFunction(() => window.Jupyter && Jupyter.notebook && Jupyter.notebook.kernel
      && Jupyter.notebook.kernel.is_connected(), null, { timeout: 90 * SECONDS });
    await idle(page);
    await runs(page);
    await completes(page);
    await inspects(page);
    await asks(page);
    await interrupts(page);
    await restarts(page);
  } catch (error) {
    await page.screenshot({ path: `${shots}/failed.png` });
    throw error;
  } finally {
    await browser.close();
  }
}

function idle(page) {
  return page.waitForFunction(() => !document.querySelector('.kernel_busy_icon')
    && Jupyter.notebook.kernel.info_reply.status === 'ok', null, { timeout: 90 * SECONDS });
}

// Puts code into a new last cell and returns its index.
async function typed(page, code) {
  return page.evaluate(text => {
    const notebook = Jupyter.notebook;
    const cell = notebook.insert_cell_at_bottom('code');
    cell.set_text(text);
    const index = notebook.find_cell_index(cell);
    notebook.select(index);
    notebook.edit_mode();
    cell.focus_editor();
    cell.code_mirror.setCursor(cell.code_mirror.lineCount(), 0);
    cell.code_mirror.execCommand('goDocEnd');
    notebook.scroll_to_cell(index);
    return index;
  }, code);
}

async function outputs(page, index) {
  return page.evaluate(i => Jupyter.notebook.get_cell(i).output_area.toJSON(), index);
}

function finished(page, index) {
  return page.waitForFunction(i => /^\d+$/.test(String(Jupyter.notebook.get_cell(i).input_prompt_number)), index,
    { timeout: 60 * SECONDS });
}

async function run(page, code) {
  const index = await typed(page, code);
  await page.keyboard.press('Control+Enter');
  await finished(page, index);
  await idle(page);
  return { index, outputs: await outputs(page, index) };
}

async function runs(page) {
  await page.evaluate(() => Jupyter.notebook.execute_all_cells());
  const last = await page.evaluate(() => Jupyter.notebook.ncells() - 1);
  await finished(page, last);
  await idle(page);
  const cells = await page.evaluate(() => Jupyter.notebook.get_cells().filter(cell => cell.cell_type === 'code')
    .map(cell => cell.output_area.toJSON()));
  check('every cell of the notebook runs', cells.every(all => all.every(one => one.output_type !== 'error')), cells);
  check('a value is shown', JSON.stringify(cells).includes('"42"'), cells);
  check('a figure is drawn', await page.locator('.output_svg svg').count() > 0);
  await page.waitForFunction(() => !!window.MathJax, null, { timeout: 30 * SECONDS });
  await page.waitForFunction(() => document.querySelectorAll('.output_markdown .MathJax, .output_latex .MathJax, '
    + '.output_markdown mjx-container').length > 0, null, { timeout: 30 * SECONDS });
  console.log('ok: mathematics is typeset');
  await page.screenshot({ path: `${shots}/ran.png` });
}

async function completes(page) {
  const index = await typed(page, 'Math.multiplyH');
  await page.keyboard.press('Tab');
  await page.waitForFunction(i => Jupyter.notebook.get_cell(i).get_text().includes('Math.multiplyHigh'), index,
    { timeout: 20 * SECONDS });
  console.log('ok: Tab completes what can only be one thing');
  await typed(page, 'Math.m');
  await page.keyboard.press('Tab');
  await page.waitForSelector('#complete, .completions', { timeout: 20 * SECONDS });
  const choices = await page.locator('#complete').innerText();
  check('Tab offers choices', choices.includes('max'), choices);
  await page.screenshot({ path: `${shots}/completion.png` });
  await page.keyboard.press('Escape');
}

async function inspects(page) {
  await typed(page, 'Math.max');
  await page.keyboard.press('Shift+Tab');
  await page.waitForFunction(() => {
    const tip = document.querySelector('#tooltip');
    return tip && getComputedStyle(tip).display !== 'none' && tip.innerText.includes('max');
  }, null, { timeout: 20 * SECONDS });
  console.log('ok: Shift-Tab tells about a method');
  await page.screenshot({ path: `${shots}/inspection.png` });
  await page.keyboard.press('Escape');
}

async function asks(page) {
  const index = await typed(page, 'var lines = new java.util.Scanner(System.in);\nString name = lines.nextLine();\n'
    + '"hello " + name');
  await page.keyboard.press('Control+Enter');
  const box = page.locator('.raw_input');
  await box.waitFor({ timeout: 30 * SECONDS });
  await box.fill('tie beam');
  await box.press('Enter');
  await finished(page, index);
  await idle(page);
  const found = await outputs(page, index);
  check('an answer to a prompt reaches the cell', JSON.stringify(found).includes('hello tie beam'), found);
}

async function interrupts(page) {
  await run(page, 'int kept = 7;');
  const index = await typed(page, 'while (true) { }');
  await page.keyboard.press('Control+Enter');
  await page.waitForSelector('.kernel_busy_icon', { timeout: 20 * SECONDS });
  await page.waitForTimeout(500);
  await page.evaluate(() => Jupyter.notebook.kernel.interrupt());
  await finished(page, index);
  await idle(page);
  const found = await outputs(page, index);
  check('an endless loop is interrupted', found.length > 0 && found[found.length - 1].output_type === 'error', found);
  const after = await run(page, 'kept + 1');
  check('and its variables are kept', JSON.stringify(after.outputs).includes('"8"'), after.outputs);
}

async function restarts(page) {
  await page.evaluate(() => new Promise((done, failed) => Jupyter.notebook.kernel.restart(done, failed)));
  await page.waitForFunction(() => Jupyter.notebook.kernel.is_connected(), null, { timeout: 60 * SECONDS });
  const forgotten = await run(page, 'kept');
  check('a restart forgets the variables', forgotten.outputs[0].output_type === 'error', forgotten.outputs);
  const after = await run(page, '2 + 3');
  check('and the kernel runs on', JSON.stringify(after.outputs).includes('"5"'), after.outputs);
  await page.screenshot({ path: `${shots}/restarted.png` });
}

main().then(() => console.log('all held'), error => {
  console.error(error);
  process.exit(1);
});
