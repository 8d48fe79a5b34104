/** What a page of the site does beside being read: examples can be edited and run, citations can be copied. */
for (const [index, example] of [...document.querySelectorAll('.example')].entries()) offerToRun(example, index)
for (const block of document.querySelectorAll('.cite > :not(summary)')) offerToCopy(block)
for (const table of document.querySelectorAll('.tsd-typography table')) letScroll(table)
for (const picture of document.querySelectorAll('pre')) picture.tabIndex = 0

function offerToRun(example, index) {
  const button = make('button', { type: 'button', className: 'example-open', textContent: 'Edit and run' })
  button.addEventListener('click', () => open(example, index))
  example.append(button)
}

/** Puts an editor in the place of the printed code, and runs it once. */
function open(example, index) {
  const editor = make('textarea', { className: 'example-editor', spellcheck: false, value: example.dataset.code })
  editor.setAttribute('aria-label', 'Code of the example')
  editor.rows = editor.value.split('\n').length + 1
  const runButton = make('button', { type: 'button', className: 'example-run', textContent: 'Run' })
  const resetButton = make('button', { type: 'button', className: 'example-reset', textContent: 'Start over' })
  const output = make('div', { className: 'example-output', id: `example-output-${index}`, tabIndex: 0 })
  output.setAttribute('role', 'log')
  output.setAttribute('aria-label', 'What the example gives')
  runButton.addEventListener('click', () => runInto(output, example))
  resetButton.addEventListener('click', () => {
    editor.value = example.dataset.code
    runInto(output, example)
  })
  editor.addEventListener('keydown', (event) => {
    if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) runInto(output, example)
  })
  const bar = make('p', { className: 'example-bar' })
  bar.append(runButton, resetButton, ' or Ctrl+Enter in the code')
  example.replaceChildren(editor, bar, output)
  editor.focus()
  runInto(output, example)
}

async function runInto(output, example) {
  output.replaceChildren('Running …')
  try {
    const { run } = await library()
    output.replaceChildren()
    await run(codeBefore(example), codeOf(example), (shown) => output.append(rendered(shown)))
    if (output.childElementCount === 0) output.append('It ran; it has no value to show.')
  } catch (error) {
    output.replaceChildren(String(error))
  }
}

/** The library is fetched once, when the first example is run; a script element works from the file system too. */
function library() {
  window.saltwrightLive ??= new Promise((resolve, reject) => {
    const script = make('script', { src: `${document.documentElement.dataset.base}assets/live.js` })
    script.addEventListener('load', () => resolve(window.saltwrightExamples))
    script.addEventListener('error', () => reject(new Error('The library could not be loaded.')))
    document.head.append(script)
  })
  return window.saltwrightLive
}

/** As it stands in the editor, or as printed. */
function codeOf(example) {
  return example.querySelector('textarea')?.value ?? example.dataset.code
}

/** The code of the examples that this one continues. */
function codeBefore(example) {
  const all = [...document.querySelectorAll('.example')]
  const chain = []
  let at = all.indexOf(example)
  while (at > 0 && 'continued' in all[at].dataset) {
    at -= 1
    chain.unshift(codeOf(all[at]))
  }
  return chain.join('\n')
}

function rendered({ kind, source, text, html }) {
  const row = make('div', { className: `shown shown-${kind}` })
  if (source !== undefined) row.append(make('code', { className: 'shown-source', textContent: source }))
  const value = make(html === undefined ? 'pre' : 'div', { className: 'shown-value' })
  if (html === undefined) value.textContent = text
  else value.innerHTML = html // sheets and worked lines of the library, which escapes all words
  row.append(value)
  return row
}

function offerToCopy(block) {
  const label = block.getAttribute('aria-label') ?? 'text'
  const button = make('button', { type: 'button', className: 'cite-copy', textContent: `Copy as ${label}` })
  const text = block.textContent
  button.addEventListener('click', async () => {
    await navigator.clipboard.writeText(text)
    button.textContent = 'Copied'
  })
  block.after(button)
}

/** Wide tables scroll by themselves on a phone instead of the page. */
function letScroll(table) {
  const frame = make('div', { className: 'table-frame', tabIndex: 0 })
  frame.setAttribute('role', 'region')
  frame.setAttribute('aria-label', 'Table')
  table.replaceWith(frame)
  frame.append(table)
}

function make(tag, properties) {
  return Object.assign(document.createElement(tag), properties)
}
