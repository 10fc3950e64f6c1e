export {
  calibratedAirspeed,
  equivalentAirspeed,
  machNumber,
  trueAirspeed,
  trueAirspeedByRule,
} from "./airspeed.ts";
export {
  coldTemperatureError,
  coldTemperatureErrorByRule,
  lagError,
  settingError,
  settingErrorByRule,
} from "./altimetry.ts";
export {
  densityAltitude,
  feetPerHectopascal,
  isaAltitude,
  isaDensity,
  isaPressure,
  isaTemperature,
  pressureAltitude,
  pressureAltitudeByRule,
} from "./atmosphere.ts";
export { climbLostInTurn, dragInTurn, pitchAttitude } from "./attitude.ts";
export type { Turns } from "./bounds.ts";
export * from "./catalogue/index.ts";
export {
  compassAccelerating,
  compassHeading,
  compassInTurn,
  magneticDip,
  rollOutHeadingByRule,
  rollOutReading,
  timedTurn,
  trueHeading,
} from "./compass.ts";
export { altimeterErrorBudget, type ErrorBudget, errorBudget } from "./error-budget.ts";
export { type Fit, fitExtraLoad, fitLag, fitRollRate } from "./fit.ts";
export { type Entry, type Hold, holdEntry, holdOutbound, holdOutboundByRule } from "./holding.ts";
export { levelOffLead, levelOffLeadByRule, rollOutLead, rollOutLeadByRule, turnLeadDistance } from "./leads.ts";
export {
  type LevelOff,
  type LevelOffPoint,
  levelOffLoad,
  levelOffMiss,
  levelOffPath,
  levelOffPathByRule,
  levelOffTime,
} from "./level-off.ts";
export * from "./limits.ts";
export { gyroDrift, shownVerticalSpeed, turnCoordinator, turnNeedle } from "./panel.ts";
export { airspeedWithBlockedPitot, airspeedWithBlockedStatic, type Drain } from "./pitot-static.ts";
export * from "./quantity.ts";
export {
  arcLead,
  courseHalfWidth,
  groundDistance,
  interceptLead,
  minutesToStation,
  minutesToStationByRule,
  pathHeight,
  type Side,
  slantRange,
  trackError,
  trackErrorByOneInSixty,
} from "./radio.ts";
export {
  RECOVERY_ORDERS as recoveryOrders,
  type Recovery,
  type RecoveryOrder,
  type RecoveryPoint,
  recoveryCost,
  recoveryPath,
} from "./recovery.ts";
export { turnLeadDistanceRolling } from "./rolling-lead.ts";
export { type Spiral, type SpiralPoint, spiralDive, spiralPath } from "./spiral.ts";
export { type PathPoint, type Turn, turnPath } from "./turn-path.ts";
export {
  bankByFifteenPercentRule,
  bankByTenthPlusSevenRule,
  bankForRadius,
  bankForRate,
  loadFactor,
  stallSpeedInTurn,
  turnRadius,
  turnRate,
  turnTime,
} from "./turns.ts";
export { type BankModel, bankModels, heightInUncompensatedBank } from "./uncompensated-bank.ts";
export { convert, shortestTurn, type Unit, type UnitKind, UnitMismatch, unitKind, units } from "./units.ts";
export {
  angleForVerticalSpeed,
  descentDistance,
  descentDistanceByRule,
  feetPerMile,
  heightError,
  lookInterval,
  verticalSpeedByRule,
  verticalSpeedForAngle,
  verticalSpeedFromPitch,
} from "./vertical.ts";
export { type FeltTurn, feltRate, feltRateInTurn, timeUntilUnfelt } from "./vestibular.ts";
export {
  maximumDrift,
  maximumDriftByRule,
  trackMadeGood,
  turnInWind,
  windComponents,
  windTriangle,
} from "./wind.ts";
