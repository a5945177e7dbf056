import { useEffect, useRef, useState, type RefObject } from 'react'

/** How wide an element is, in pixels; 0 until it is known. */
export function useWidth<Element extends HTMLElement>(): readonly [RefObject<Element | null>, number] {
  const ref = useRef<Element>(null)
  const [width, setWidth] = useState(0)
  useEffect(() => {
    const observer = new ResizeObserver(([entry]) => setWidth(Math.floor(entry?.contentRect.width ?? 0)))
    if (ref.current !== null) observer.observe(ref.current)
    return () => observer.disconnect()
  }, [])
  return [ref, width]
}
