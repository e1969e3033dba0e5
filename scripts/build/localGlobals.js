// The engine asks for these millions of times; held in the bundle they cost nothing, while a fresh script context
// looks each global up anew.
const LocalMath = Math;
const LocalNumber = Number;
const LocalArray = Array;
const LocalObject = Object;
const LocalString = String;

export {
  LocalArray as Array,
  LocalMath as Math,
  LocalNumber as Number,
  LocalObject as Object,
  LocalString as String,
};
