// An aeroplane's constants from readings noted in flight.
export { FitPanelElement, type Fitted } from "./element.ts";
