// Audits the amounts that a manual prints: the compiler marks a misspelt key or a mass where a volume belongs.
import { type Finding, planPreparation, type Recipe } from 'saltwright/preparation'

/** Invented for this example. */
const printed: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Ammonium iron(II) sulfate hexahydrate, as printed',
  product: '(NH4)2Fe(SO4)2·6H2O',
  stages: [{ name: 'Crystallise', equation: 'FeSO4 + (NH4)2SO4 + 6H2O -> (NH4)2Fe(SO4)2·6H2O' }],
  supplies: [
    { form: 'solid', substance: 'FeSO4', weighedAs: 'FeSO4·7H2O', asPrinted: '10.0 g' },
    { form: 'solid', substance: '(NH4)2SO4', asPrinted: '5.0 g' },
  ],
  claims: [{ of: '(NH4)2SO4', excess: '10 %' }],
}

const { supplies, limiting, findings } = planPreparation(printed)
for (const { name, excess } of supplies) console.log(`${name}: ${excess?.equivalents.value.toFixed(3)} equivalents`)
console.log(`limited by ${limiting.join(' and ')}`)
for (const finding of findings) console.log(sentence(finding))

function sentence({ severity, message }: Finding): string {
  return `${severity}: ${message}`
}
