import {
  Colors,
  DxfWriter,
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from "@tarikjabiri/dxf";
import { cutterLayers } from "./cutter-svg.ts";
import type { CuttingPlan } from "./cutting-plan.ts";

const colors = { cut: Colors.White, score: Colors.Blue, text: Colors.Green } as const;

/** The text of a DXF file, in mm, y up: layers cut, score and text. */
export function cutterDxf({ height, marks }: CuttingPlan): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  for (const layer of cutterLayers) dxf.addLayer(layer, colors[layer], "CONTINUOUS");
  for (const mark of marks) {
    if (mark.kind === "text") {
      const [x, y] = mark.at;
      dxf.addText(point3d(x, height - y), mark.size, mark.text, {
        layerName: mark.layer,
        rotation: mark.angle ?? 0,
        horizontalAlignment: TextHorizontalAlignment.Center,
        verticalAlignment: TextVerticalAlignment.Middle,
        secondAlignmentPoint: point3d(x, height - y),
      });
      continue;
    }
    const points = mark.points.map(([x, y]) => ({ point: point2d(x, height - y) }));
    dxf.addLWPolyline(points, { layerName: mark.layer, flags: LWPolylineFlags.None });
  }
  return dxf.stringify();
}
