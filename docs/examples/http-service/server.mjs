/**
 * Plans, assesses and reviews over HTTP, with nothing but Node: PORT=8080 node server.mjs
 *
 *   POST /plans        a recipe                                     the plan
 *   POST /assessments  { recipe, records }                          the assessment
 *   POST /reviews      { recipe, worksheet }                        the review of a filled worksheet
 *
 * What a recipe or an answer gets wrong is answered with status 422 and the library's own error as JSON: `code`, `message`, `path`,
 * `hint`, and every single mistake under `problems`. Nothing is kept: each request carries its recipe.
 */
import { createServer } from 'node:http'
import { isSaltwrightError } from 'saltwright'
import { assessPreparation, planPreparation } from 'saltwright/preparation'
import { reviewWorksheet } from 'saltwright/review'

const largestBody = 100_000

const routes = {
  'POST /plans': (recipe) => planPreparation(recipe),
  'POST /assessments': ({ recipe, records }) => assessPreparation(recipe, records),
  'POST /reviews': ({ recipe, worksheet }) => reviewWorksheet(planPreparation(recipe), worksheet),
}

const server = createServer(async (request, response) => {
  const { status, body } = await answer(request)
  response.writeHead(status, { 'content-type': 'application/json; charset=utf-8' })
  response.end(JSON.stringify(body))
})

async function answer(request) {
  const route = Object.hasOwn(routes, routeOf(request)) ? routes[routeOf(request)] : undefined
  if (route === undefined) return refused(404, 'service/no-such-route', `There is no ${routeOf(request)}.`)
  try {
    return { status: 200, body: route(await bodyOf(request)) }
  } catch (error) {
    if (isSaltwrightError(error)) return { status: 422, body: error }
    if (error instanceof SyntaxError) return refused(400, 'service/not-json', error.message)
    if (error instanceof RangeError) return refused(413, 'service/too-long', error.message)
    if (error instanceof TypeError)
      return refused(422, 'service/not-an-object', 'The body is not an object of this route.')
    throw error
  }
}

function routeOf({ method, url }) {
  return `${method} ${url}`
}

async function bodyOf(request) {
  let text = ''
  for await (const chunk of request.setEncoding('utf8')) {
    if (text.length <= largestBody) text += chunk // the rest is read and left, so that the answer arrives
  }
  if (text.length > largestBody) throw new RangeError(`The body is longer than ${largestBody} characters.`)
  return JSON.parse(text)
}

function refused(status, code, message) {
  return { status, body: { code, message } }
}

server.listen(Number(process.env.PORT ?? 8080), '127.0.0.1', () => {
  console.log(`listening on port ${server.address().port}`)
})
