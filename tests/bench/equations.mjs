/** Equations of the laboratory and of textbooks, without their numbers. From memory. */
const known = [
  'H2 + O2 -> H2O',
  'ZnO + H2SO4 -> ZnSO4 + H2O',
  'ZnSO4 + H2O -> ZnSO4·7H2O',
  'Al + KOH + H2O -> K[Al(OH)4] + H2',
  'FeSO4 + (NH4)2SO4 + H2O -> (NH4)2Fe(SO4)2·6H2O',
  'KMnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O',
  'K2Cr2O7 + FeSO4 + H2SO4 -> K2SO4 + Cr2(SO4)3 + Fe2(SO4)3 + H2O',
  'MnO4^- + C2O4^2- + H^+ -> Mn^2+ + CO2 + H2O',
  'Cr2O7^2- + Fe^2+ + H^+ -> Cr^3+ + Fe^3+ + H2O',
  'Ca3(PO4)2 + SiO2 + C -> P4 + CO + CaSiO3',
  'CoCl2·6H2O + NH4Cl + NH3 + O2 -> [Co(NH3)6]Cl3 + H2O',
  'FeC2O4·2H2O + H2O2 + K2C2O4 -> K3[Fe(C2O4)3] + Fe(OH)3 + H2O',
  'C57H110O6 + O2 -> CO2 + H2O',
  'CrI3 + KOH + Cl2 -> K2CrO4 + KIO4 + KCl + H2O',
  'K4[Fe(CN)6] + KMnO4 + H2SO4 -> KHSO4 + Fe2(SO4)3 + MnSO4 + HNO3 + CO2 + H2O',
]

const symbols = 'H C N O F Na Mg Al Si P S Cl K Ca Cr Mn Fe Co Ni Cu Zn Br Ag I Ba Pb'.split(' ')

/** Numbers from 0 to below `limit`, the same in every run. */
function numbers(seed) {
  let state = seed
  return (limit) => {
    state = (state * 1103515245 + 12345) % 2147483648
    return Math.floor((state / 2147483648) * limit)
  }
}

/** An invented equation of some species: the last one is put together from the others, so that it has an answer. */
function invented(count, next) {
  const elements = [...symbols].sort(() => next(3) - 1).slice(0, count - 1)
  const species = elements.map((own) => new Map([[own, 1 + next(3)]]))
  for (const atoms of species)
    for (let more = next(3); more > 0; more -= 1) atoms.set(elements[next(count - 1)], 1 + next(4))
  const last = new Map()
  for (const atoms of species) {
    const times = 1 + next(4)
    for (const [symbol, number] of atoms) last.set(symbol, (last.get(symbol) ?? 0) + times * number)
  }
  const written = (atoms) => [...atoms].map(([symbol, number]) => symbol + (number === 1 ? '' : number)).join('')
  return `${species.map(written).join(' + ')} -> ${written(last)}`
}

/** Equations of 2 to 20 species, as many of each size, with the known ones; `isUsable` tells those with one answer. */
export function equations(count, isUsable) {
  const next = numbers(7)
  const all = known.filter(isUsable)
  for (let index = 0; all.length < count; index += 1) {
    const equation = invented(2 + (index % 19), next)
    if (isUsable(equation)) all.push(equation)
  }
  return all
}
