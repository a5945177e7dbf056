import { createRoot } from 'react-dom/client'
import { Workbench } from './workbench/Workbench'
import './workbench.css'

createRoot(document.getElementById('workbench')!).render(<Workbench />)
